using System.IO.Pipelines;
using Microsoft.AspNetCore.Connections;

namespace Companion.Server.Live.Transport;

/// <summary>
/// Cuts a connection off that sends more than a page has reason to. It counts bytes below the hub, since a hub's filters see neither
/// calls of unknown methods nor wrong arguments, and a limit on requests sees one request for a whole connection.
/// </summary>
/// <param name="BytesPerSecond">What a connection may send for long.</param>
/// <param name="Burst">What it may send at once, in bytes.</param>
internal sealed record TrafficLimit(int BytesPerSecond, int Burst)
{
    /// <summary>Puts the limit on one connection and lets it on.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="next">What comes after.</param>
    /// <param name="clock">The clock.</param>
    public Task Apply(ConnectionContext connection, ConnectionDelegate next, TimeProvider clock)
    {
        var bucket = new Bucket(this, clock);
        var input = new CountedReader(connection.Transport.Input, bytes =>
        {
            if (!bucket.Take(bytes))
                connection.Abort(new ConnectionAbortedException("The connection sent more than it may."));
        });
        connection.Transport = new CountedPipe(input, connection.Transport.Output);
        return next(connection);
    }

    private sealed class Bucket(TrafficLimit limit, TimeProvider clock)
    {
        private double _left = limit.Burst;
        private long _filledAt = clock.GetTimestamp();

        public bool Take(long bytes)
        {
            var now = clock.GetTimestamp();
            var filled = clock.GetElapsedTime(_filledAt, now).TotalSeconds * limit.BytesPerSecond;
            _left = Math.Min(limit.Burst, _left + filled) - bytes;
            _filledAt = now;
            return _left >= 0;
        }
    }

    private sealed record CountedPipe(PipeReader Input, PipeWriter Output) : IDuplexPipe;
}
