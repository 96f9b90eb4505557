using Companion.Server.Wire;
using Microsoft.AspNetCore.Http.Connections;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Transport;

/// <summary>How all hubs are reached: by WebSockets alone, in one shape on both protocols, with a limit on what comes in.</summary>
internal static class Hubs
{
    /// <summary>Adds SignalR, once for all hubs.</summary>
    /// <param name="services">Where to.</param>
    public static ISignalRServerBuilder AddHubs(this IServiceCollection services) =>
        services.AddSingleton<ReplacedKeyFilter>().AddSignalR(hub => hub.AddFilter<ReplacedKeyFilter>())
            .AddJsonProtocol(protocol => WireJson.Shape(protocol.PayloadSerializerOptions))
            .AddMessagePackProtocol(protocol => protocol.SerializerOptions = WireMessagePack.Options);

    /// <summary>Maps a hub.</summary>
    /// <param name="app">The server.</param>
    /// <param name="path">Where.</param>
    /// <param name="limit">What one connection may send, besides what its request shares with others.</param>
    /// <param name="stalled">After which time a connection is cut off that takes nothing.</param>
    /// <param name="waitsForNobody">
    /// Whether a send is over at once, however slowly the connection takes it. What it is behind by waits for it in memory, until it is
    /// cut off: a second's messages or two.
    /// </param>
    public static IEndpointConventionBuilder MapHub<THub>(
        this WebApplication app, string path, TrafficLimit limit, TimeSpan stalled, bool waitsForNobody = false)
        where THub : Hub
    {
        var clock = app.Services.GetRequiredService<TimeProvider>();
        var options = new HttpConnectionDispatcherOptions { Transports = HttpTransportType.WebSockets, TransportSendTimeout = stalled };
        if (waitsForNobody)
            options.TransportMaxBufferSize = 0; // without a bound
        return app.MapConnections(
            path,
            options,
            connections => connections
                .Use(next => connection => limit.Apply(connection, next, clock, connection.GetHttpContext()?.Features.Get<SharedTraffic>()?.Bytes))
                .UseHub<THub>());
    }
}
