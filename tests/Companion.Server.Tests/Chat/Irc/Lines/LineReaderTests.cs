using System.IO.Pipelines;
using System.Text;
using Companion.Server.Chat.Irc.Lines;

namespace Companion.Server.Tests.Chat.Irc.Lines;

public sealed class LineReaderTests
{
    [Theory]
    [InlineData("one\r\ntwo\r\n", "one|two")]
    [InlineData("one\ntwo\n", "one|two")]
    [InlineData("\r\n\r\none\r\n\n", "one")]
    [InlineData("one\r\nhalf", "one")]
    [InlineData("", "")]
    public async Task Lines_end_with_LF_and_empty_ones_are_passed_over(string sent, string lines) =>
        Assert.Equal(lines.Split('|', StringSplitOptions.RemoveEmptyEntries), await Read(Encoding.UTF8.GetBytes(sent)));

    [Fact]
    public async Task Lines_are_the_same_however_the_bytes_arrive()
    {
        var sent = Encoding.UTF8.GetBytes("PING :é😀\r\n:a PRIVMSG #b :中文\r\n");

        Assert.Equal(["PING :é😀", ":a PRIVMSG #b :中文"], await Read([.. sent.Select(octet => new[] { octet })]));
    }

    [Fact]
    public async Task Bytes_that_are_no_text_become_replacement_characters() =>
        Assert.Equal(["a\uFFFD\uFFFDb"], await Read([.. "a"u8, 0xFF, 0xC3, .. "b\r\n"u8]));

    [Theory]
    [InlineData(8191 + 512, true)]
    [InlineData(8191 + 513, false)]
    [InlineData(1_000_000, false)]
    public async Task A_line_that_is_too_long_is_thrown_away_to_its_end(int length, bool isKept)
    {
        var pipe = new Pipe(new PipeOptions(pauseWriterThreshold: 0));
        var reader = new LineReader(pipe.Reader);
        await pipe.Writer.WriteAsync(Encoding.UTF8.GetBytes($"{new string('x', length)}\nnext\n"), Stop);
        await pipe.Writer.CompleteAsync();

        if (isKept)
            Assert.Equal(length, (await reader.Next(Stop))?.Length);
        Assert.Equal("next", await reader.Next(Stop));
        Assert.Null(await reader.Next(Stop));
        Assert.Equal(isKept ? 0 : 1, reader.Skipped);
    }

    [Fact]
    public async Task A_line_without_an_end_does_not_fill_the_memory()
    {
        var pipe = new Pipe();
        var reading = new LineReader(pipe.Reader).Next(Stop);
        // The pipe holds 64 KiB: it would stop taking bytes if the reader kept them.
        for (var block = 0; block < 100; block++)
            await pipe.Writer.WriteAsync(new byte[10_000], Stop);
        await pipe.Writer.WriteAsync("\nnext\n"u8.ToArray(), Stop);

        Assert.Equal("next", await reading);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static async Task<List<string>> Read(params byte[][] sent)
    {
        var pipe = new Pipe();
        var reader = new LineReader(pipe.Reader);
        var reading = ReadAll(reader);
        foreach (var block in sent)
            await pipe.Writer.WriteAsync(block, Stop);
        await pipe.Writer.CompleteAsync();
        return await reading;
    }

    private static async Task<List<string>> ReadAll(LineReader reader)
    {
        List<string> lines = [];
        while (await reader.Next(Stop) is { } line)
            lines.Add(line);
        return lines;
    }
}
