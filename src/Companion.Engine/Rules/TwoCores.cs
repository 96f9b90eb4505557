namespace Companion.Engine.Rules;

/// <summary>Has a second core help with a search, where one is free.</summary>
internal static class TwoCores
{
    /// <summary>
    /// Does a piece of work, and beside it another that takes from the same pieces. The other is left out where no core has taken it up
    /// by the time the first is done; so nobody waits for a core that is busy.
    /// </summary>
    /// <param name="work">Done by the caller's thread.</param>
    /// <param name="help">Done by another thread, or not at all.</param>
    internal static void Run(Action work, Action help)
    {
        var taken = 0;
        var helper = Task.Run(() =>
        {
            if (Interlocked.Exchange(ref taken, 1) == 0)
                help();
        });
        try
        {
            work();
        }
        finally
        {
            if (Interlocked.Exchange(ref taken, 1) != 0)
                helper.Wait();
        }
    }
}
