using ClimateLens.Logs.Store;

namespace ClimateLens.Logs.Tests;

/// <summary>A disk whose n-th call fails as a full one does, and, if it stays full, every later call that needs room as well.</summary>
internal sealed class FailingDisk(int failingCall, bool staysFull) : StoreDisk
{
    private int _calls;

    /// <summary>Whether the failing call was reached.</summary>
    public bool Failed => _calls >= failingCall;

    public override Stream Create(string path)
    {
        Call(path);
        return new FailingStream(this, base.Create(path), path);
    }

    public override void Persist(string path)
    {
        Call(path);
        base.Persist(path);
    }

    public override void Move(string from, string to)
    {
        Call(to);
        base.Move(from, to);
    }

    public override void Remove(string path)
    {
        Call(path, needsRoom: false);
        base.Remove(path);
    }

    public override void MakeFolder(string path)
    {
        Call(path);
        base.MakeFolder(path);
    }

    public override void RemoveFolder(string path)
    {
        Call(path, needsRoom: false);
        base.RemoveFolder(path);
    }

    private void Call(string path, bool needsRoom = true)
    {
        _calls++;
        if (_calls == failingCall || (staysFull && needsRoom && _calls > failingCall))
        {
            throw new IOException($"No space left on device : '{path}'");
        }
    }

    /// <summary>Takes half of the bytes of the failing write, as a disk does that fills up.</summary>
    private sealed class FailingStream(FailingDisk disk, Stream inner, string path) : Stream
    {
        public override bool CanRead => false;

        public override bool CanSeek => inner.CanSeek;

        public override bool CanWrite => true;

        public override long Length => inner.Length;

        public override long Position
        {
            get => inner.Position;
            set => inner.Position = value;
        }

        public override void Flush() => inner.Flush();

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => inner.Seek(offset, origin);

        public override void SetLength(long value) => inner.SetLength(value);

        public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            try
            {
                disk.Call(path);
            }
            catch (IOException)
            {
                inner.Write(buffer[..(buffer.Length / 2)]);
                throw;
            }

            inner.Write(buffer);
        }

        protected override void Dispose(bool disposing)
        {
            inner.Dispose();
            base.Dispose(disposing);
        }
    }
}
