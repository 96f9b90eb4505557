namespace Companion.Server.CommandLine;

/// <summary>What the program leaves behind.</summary>
internal static class ExitCode
{
    /// <summary>Done as asked.</summary>
    public const int Fine = 0;

    /// <summary>Done as asked, and a puzzle is not good: it is no grid, or has not exactly one solution.</summary>
    public const int BadPuzzle = 1;

    /// <summary>Not done: the call is wrong, something that it needs is not there, or it was stopped.</summary>
    public const int Usage = 2;
}
