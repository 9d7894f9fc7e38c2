using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace ClimateLens.Logs.Readings;

/// <summary>
/// Hands full blocks from the thread that reads a file to one that sorts and writes them, a few at a time. A file of less
/// than one block needs no second thread.
/// </summary>
/// <param name="take">Takes the blocks, in their order.</param>
internal sealed class BlockPump(Action<int, YearRows> take) : IDisposable
{
    // A row group is written in one go: the reading side fills as many blocks meanwhile.
    private const int BlocksInBetween = 20;

    private readonly BlockingCollection<(int Year, YearRows Block)> _queue = new(BlocksInBetween);
    private readonly CancellationTokenSource _failed = new();
    private Task? _writer;

    /// <summary>Hands over a block.</summary>
    public void Post(int year, YearRows block)
    {
        _writer ??= Task.Run(Work);
        try
        {
            _queue.Add((year, block), _failed.Token);
        }
        catch (OperationCanceledException)
        {
            Finish();
        }
    }

    /// <summary>Waits until all is taken; throws what the other thread met.</summary>
    public void Finish()
    {
        _queue.CompleteAdding();
        try
        {
            _writer?.Wait();
        }
        catch (AggregateException e)
        {
            ExceptionDispatchInfo.Throw(e.InnerException!);
        }
    }

    private void Work()
    {
        try
        {
            foreach ((int year, YearRows block) in _queue.GetConsumingEnumerable())
            {
                take(year, block);
            }
        }
        catch
        {
            _failed.Cancel();
            throw;
        }
    }

    /// <summary>Where the reading side failed, what was handed over is still taken, and what that meets is of no interest.</summary>
    public void Dispose()
    {
        _queue.CompleteAdding();
        if (_writer is not null)
        {
            Task.WaitAny(_writer);
        }

        _queue.Dispose();
        _failed.Dispose();
    }
}
