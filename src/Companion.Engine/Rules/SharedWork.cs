namespace Companion.Engine.Rules;

/// <summary>A piece of work that one of two cores does and the other waits for.</summary>
internal sealed class SharedWork
{
    private int _isTaken;
    private bool _isDone;

    /// <summary>Does the work, unless it was taken before.</summary>
    internal void Do(Action work)
    {
        if (Interlocked.Exchange(ref _isTaken, 1) != 0)
            return;
        try
        {
            work();
        }
        finally
        {
            // Nobody waits for what has failed: the one who did it tells.
            Volatile.Write(ref _isDone, true);
        }
    }

    /// <summary>Waits until the work is done, which another core has begun or is about to: it takes less time than to go to sleep.</summary>
    internal void Await()
    {
        for (var wait = new SpinWait(); !Volatile.Read(ref _isDone);)
            wait.SpinOnce(sleep1Threshold: -1);
    }
}
