namespace Companion.Server.Log;

/// <summary>
/// A stream to a log file that loses what the disk has no room for. A program that is stopped, or goes on, while the disk is full
/// must not fail for its log lines, of which the last are written as the file is closed.
/// </summary>
/// <param name="file">The file.</param>
internal sealed class LossyStream(Stream file) : Stream
{
    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => file.CanSeek;

    /// <inheritdoc/>
    public override bool CanWrite => file.CanWrite;

    /// <inheritdoc/>
    public override long Length => file.Length;

    /// <inheritdoc/>
    public override long Position
    {
        get => file.Position;
        set => file.Position = value;
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Try(() => file.Write(buffer, offset, count));

    /// <inheritdoc/>
    public override void Flush() => Try(file.Flush);

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => file.Seek(offset, origin);

    /// <inheritdoc/>
    public override void SetLength(long value) => Try(() => file.SetLength(value));

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            Try(file.Dispose);
        base.Dispose(disposing);
    }

    private static void Try(Action write)
    {
        try
        {
            write();
        }
        catch (IOException)
        {
            // There is nowhere to say so: the log is full.
        }
    }
}
