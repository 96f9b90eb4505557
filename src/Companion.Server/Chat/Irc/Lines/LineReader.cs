using System.Buffers;
using System.IO.Pipelines;
using System.Text;

namespace Companion.Server.Chat.Irc.Lines;

/// <summary>
/// Finds the lines in what a server sends: each ends with LF, a CR before it goes, empty ones are passed over. Bytes that are no UTF-8
/// become U+FFFD. What is longer than any line may be is thrown away to its end, so that nothing can fill the memory.
/// </summary>
/// <param name="bytes">Where they come from.</param>
internal sealed class LineReader(PipeReader bytes)
{
    /// <summary>The most octets of a line: 8,191 of tags and 512 of message. Source: IRCv3, Message Tags.</summary>
    public const int Longest = 8191 + 512;

    private bool _isSkipping;

    /// <summary>How many lines were too long.</summary>
    public long Skipped { get; private set; }

    /// <summary>The next line, or null when the connection was closed.</summary>
    /// <param name="stop">Stops waiting.</param>
    public async Task<string?> Next(CancellationToken stop)
    {
        while (true)
        {
            var read = await bytes.ReadAsync(stop);
            var buffer = read.Buffer;
            if (Take(ref buffer) is { } line)
            {
                bytes.AdvanceTo(buffer.Start);
                return line;
            }

            if (buffer.Length > Longest)
            {
                _isSkipping = true;
                buffer = buffer.Slice(buffer.End);
            }

            bytes.AdvanceTo(buffer.Start, buffer.End);
            if (read.IsCompleted)
                return null;
        }
    }

    private string? Take(ref ReadOnlySequence<byte> buffer)
    {
        while (buffer.PositionOf((byte)'\n') is { } end)
        {
            var line = buffer.Slice(0, end);
            buffer = buffer.Slice(buffer.GetPosition(1, end));
            if (_isSkipping || line.Length > Longest)
                Skipped++;
            else if (Encoding.UTF8.GetString(line).TrimEnd('\r') is { Length: > 0 } text)
                return text;
            _isSkipping = false;
        }

        return null;
    }
}
