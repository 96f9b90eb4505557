namespace Companion.Server.CommandLine;

/// <summary>Keeps the last number that was reported; it may be read from another thread.</summary>
internal sealed class Tally : IProgress<long>
{
    private long _value;

    /// <summary>The last number; 0 before there is one.</summary>
    public long Value => Interlocked.Read(ref _value);

    /// <inheritdoc/>
    public void Report(long value) => Interlocked.Exchange(ref _value, value);
}
