using System.Text;
using ClimateLens.Analysis.Reviews;
using ClimateLens.Nursery.Settings;
using ClimateLens.Reports.Publishing;
using ClimateLens.TestKit;

namespace ClimateLens.Reports.Tests;

/// <summary>A site whose disk fails at any step, and one that is read while it is written.</summary>
public sealed class PublishingUnderFireTests
{
    private static readonly Review First = SampleReviews.Rich(), Second = First with { RiskHours = new Estimate(9, 8, 10), Provenance = First.Provenance with { InputHash = new string('b', 64) } };

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void EveryStepInTurnFails_FilesStayOldOrNew_AndTheNextRunEndsWithTheUndisturbedSite(bool staysFull)
    {
        using TemporaryFolder undisturbed = new();
        Publish(undisturbed.Path, First, SiteDisk.Real);
        Dictionary<string, byte[]> before = Files(undisturbed.Path);
        Publish(undisturbed.Path, Second, SiteDisk.Real);
        Dictionary<string, byte[]> after = Files(undisturbed.Path);
        int steps = 0;
        for (int n = 1; ; n++)
        {
            using TemporaryFolder site = new();
            Publish(site.Path, First, SiteDisk.Real);
            FailingSiteDisk disk = new(n, staysFull);
            try
            {
                Publish(site.Path, Second, disk);
            }
            catch (SiteUnavailableException)
            {
                // the one error that a failing site gives
            }

            if (!disk.Failed)
            {
                break;
            }

            steps = n;
            Assert.All(Files(site.Path).Where(f => before.ContainsKey(f.Key) && after.ContainsKey(f.Key)), f => Assert.True(Same(f.Value, before[f.Key]) || Same(f.Value, after[f.Key]), $"step {n}: {f.Key}"));
            Publish(site.Path, Second, SiteDisk.Real);
            Dictionary<string, byte[]> left = Files(site.Path);
            Assert.Equal(after.Keys.Order(StringComparer.Ordinal), left.Keys.Order(StringComparer.Ordinal));
            Assert.All(left.Where(f => f.Key != "index.html"), f => Assert.True(Same(f.Value, after[f.Key]), $"after step {n}: {f.Key}"));
        }

        Assert.True(steps > 60, $"only {steps} steps could fail");
    }

    [Fact]
    public async Task ReadersWhileItIsPublished_SeeWholePagesOnly()
    {
        using TemporaryFolder site = new();
        Publish(site.Path, First, SiteDisk.Real);
        string page = site.PathOf("house-1/2025-W42/index.html"), json = site.PathOf("house-1/2025-W42/review.json"), index = site.PathOf("index.html");
        using CancellationTokenSource stop = new();
        int[] counts = new int[3];
        // Threads of their own: publishing uses the pool, and a reader that waits for a place in it reads nothing.
        Task<int>[] readers = [.. Enumerable.Range(0, counts.Length).Select(reader => Task.Factory.StartNew(() =>
        {
            int reads = 0;
            while (!stop.IsCancellationRequested)
            {
                Assert.EndsWith("</html>\n", Text(page), StringComparison.Ordinal);
                Assert.EndsWith("</html>\n", Text(index), StringComparison.Ordinal);
                Assert.Equal("1", ReviewJson.Read(Encoding.UTF8.GetBytes(Text(json))).SchemaVersion);
                Volatile.Write(ref counts[reader], ++reads);
            }

            return reads;
        }, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default))];
        for (int i = 0; i < 12 || (i < 500 && counts.Min() <= 5 && !readers.Any(r => r.IsCompleted)); i++)
        {
            Publish(site.Path, i % 2 == 0 ? Second : First, SiteDisk.Real);
        }

        await stop.CancelAsync();
        Assert.All(await Task.WhenAll(readers), reads => Assert.True(reads > 5, $"only {reads} reads"));
    }

    private static string Text(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using StreamReader reader = new(file);
        return reader.ReadToEnd();
    }

    private static void Publish(string folder, Review review, SiteDisk disk)
    {
        SitePublisher publisher = new(folder, new PageOptions(UnitSystem.Metric), disk);
        publisher.Publish(review);
        publisher.Complete(review.Provenance.InputHash);
    }

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);

    private static Dictionary<string, byte[]> Files(string folder)
        => Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Where(f => !f.Contains("plotly", StringComparison.Ordinal) && !f.Contains(".staging", StringComparison.Ordinal))
            .ToDictionary(f => Path.GetRelativePath(folder, f).Replace('\\', '/'), File.ReadAllBytes);

    /// <summary>A disk whose n-th step fails as a full one does, and, if it stays full, every later one that needs room as well.</summary>
    private sealed class FailingSiteDisk(int failing, bool staysFull) : SiteDisk
    {
        private int _steps;

        public bool Failed => _steps >= failing;

        public override void Write(string path, ReadOnlySpan<byte> content)
        {
            try
            {
                Step(path);
            }
            catch (IOException)
            {
                base.Write(path, content[..(content.Length / 2)]); // as a disk does that fills up
                throw;
            }

            base.Write(path, content);
        }

        public override void Move(string from, string to)
        {
            Step(to);
            base.Move(from, to);
        }

        public override void Remove(string path)
        {
            Step(path, needsRoom: false);
            base.Remove(path);
        }

        public override void MakeFolder(string path)
        {
            Step(path);
            base.MakeFolder(path);
        }

        public override void PersistFolder(string path)
        {
            Step(path);
            base.PersistFolder(path);
        }

        private void Step(string path, bool needsRoom = true)
        {
            int step = Interlocked.Increment(ref _steps);
            if (step == failing || (staysFull && needsRoom && step > failing))
            {
                throw new IOException($"No space left on device : '{path}'");
            }
        }
    }
}
