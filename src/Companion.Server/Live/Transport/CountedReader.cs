using System.IO.Pipelines;

namespace Companion.Server.Live.Transport;

/// <summary>Tells how many bytes came in, each once, however often they are looked at.</summary>
/// <param name="inner">Where they come from.</param>
/// <param name="arrived">Told the number of new bytes.</param>
internal sealed class CountedReader(PipeReader inner, Action<long> arrived) : PipeReader
{
    private ReadResult _last;
    private long _kept;

    /// <inheritdoc/>
    public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default) =>
        Count(await inner.ReadAsync(cancellationToken));

    /// <inheritdoc/>
    public override bool TryRead(out ReadResult result)
    {
        var isRead = inner.TryRead(out result);
        if (isRead)
            Count(result);
        return isRead;
    }

    /// <inheritdoc/>
    public override void AdvanceTo(SequencePosition consumed) => AdvanceTo(consumed, consumed);

    /// <inheritdoc/>
    public override void AdvanceTo(SequencePosition consumed, SequencePosition examined)
    {
        _kept = _last.Buffer.Slice(consumed).Length;
        inner.AdvanceTo(consumed, examined);
    }

    /// <inheritdoc/>
    public override void CancelPendingRead() => inner.CancelPendingRead();

    /// <inheritdoc/>
    public override void Complete(Exception? exception = null) => inner.Complete(exception);

    private ReadResult Count(ReadResult result)
    {
        if (result.Buffer.Length > _kept)
            arrived(result.Buffer.Length - _kept);
        _last = result;
        _kept = result.Buffer.Length;
        return result;
    }
}
