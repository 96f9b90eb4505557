using Companion.Server.CommandLine;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.CommandLine;

public sealed class LongWorkTests : IDisposable
{
    private readonly FakeTimeProvider _time = new();
    private readonly StringWriter _error = new();

    [Fact]
    public void Short_work_says_nothing()
    {
        using (LongWork.Begin(Streams, "Working"))
            _time.Advance(TimeSpan.FromSeconds(0.9));
        _time.Advance(TimeSpan.FromMinutes(1));

        Assert.Equal("", _error.ToString());
    }

    [Fact]
    public void Long_work_says_how_far_it_has_come_after_a_second_and_then_every_five()
    {
        var done = 0;
        using (LongWork.Begin(Streams, "Working", () => $"{done} done"))
        {
            _time.Advance(TimeSpan.FromSeconds(1));
            done = 7;
            _time.Advance(TimeSpan.FromSeconds(5));
        }

        _time.Advance(TimeSpan.FromMinutes(1));

        Assert.Equal(
            """
            Working: 0 done, 1 s. Ctrl+C stops it.
            Working: 7 done, 6 s. Ctrl+C stops it.

            """,
            _error.ToString());
    }

    public void Dispose() => _error.Dispose();

    private CommandStreams Streams => new(_time) { Error = _error };
}
