using System.CommandLine;

namespace Companion.Server.CommandLine;

/// <summary>What a command is run with: where results and faults go, and the clock.</summary>
/// <param name="time">The clock.</param>
internal sealed class CommandStreams(TimeProvider time) : InvocationConfiguration
{
    /// <summary>The clock.</summary>
    public TimeProvider Time => time;
}
