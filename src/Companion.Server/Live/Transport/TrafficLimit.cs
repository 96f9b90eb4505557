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
    /// <param name="shared">What it may send together with others, or null for no such limit.</param>
    public Task Apply(ConnectionContext connection, ConnectionDelegate next, TimeProvider clock, TokenBucket? shared = null)
    {
        var own = new TokenBucket(BytesPerSecond, Burst, clock);
        var input = new CountedReader(connection.Transport.Input, bytes =>
        {
            if (!own.Take(bytes) || shared?.Take(bytes) == false)
                connection.Abort(new ConnectionAbortedException("The connection sent more than it may."));
        });
        connection.Transport = new CountedPipe(input, connection.Transport.Output);
        return next(connection);
    }

    private sealed record CountedPipe(PipeReader Input, PipeWriter Output) : IDuplexPipe;
}
