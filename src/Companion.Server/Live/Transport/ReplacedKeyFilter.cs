using System.Collections.Concurrent;
using Companion.Server.Access;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Transport;

/// <summary>Closes the connections that were opened with a key when that key is replaced.</summary>
internal sealed class ReplacedKeyFilter : IHubFilter
{
    private readonly ConcurrentDictionary<string, CancellationTokenRegistration> _watched = new();

    /// <inheritdoc/>
    public Task OnConnectedAsync(HubLifetimeContext context, Func<HubLifetimeContext, Task> next)
    {
        var caller = context.Context;
        if (caller.GetHttpContext()?.Features.Get<Admission>() is { } admission)
            _watched[caller.ConnectionId] = admission.Replaced.Register(caller.Abort);
        return next(context);
    }

    /// <inheritdoc/>
    public Task OnDisconnectedAsync(
        HubLifetimeContext context, Exception? exception, Func<HubLifetimeContext, Exception?, Task> next)
    {
        if (_watched.TryRemove(context.Context.ConnectionId, out var watched))
            watched.Dispose();
        return next(context, exception);
    }
}
