namespace Companion.Server.Live.Loop;

/// <summary>Shows every output the same, and catches what one of them throws, so that a dead overlay never stops the session.</summary>
/// <param name="outputs">The outputs.</param>
/// <param name="log">Where failures are reported.</param>
internal sealed partial class FanOut(IEnumerable<IOutput> outputs, ILogger<FanOut> log)
{
    private readonly IOutput[] _outputs = [.. outputs];

    /// <summary>Shows all outputs a snapshot.</summary>
    /// <param name="snapshot">The session now.</param>
    public void Show(Snapshot snapshot)
    {
        foreach (var output in _outputs)
        {
            try
            {
                output.Show(snapshot);
            }
            catch (Exception failure)
            {
                OutputFailed(output.GetType().Name, failure);
            }
        }
    }

    [LoggerMessage(LogLevel.Error, "The output {Output} failed; the session goes on.")]
    private partial void OutputFailed(string output, Exception failure);
}
