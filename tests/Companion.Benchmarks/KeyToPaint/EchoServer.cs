using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.SignalR;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace Companion.Benchmarks.KeyToPaint;

/// <summary>The floor: a bare hub that echoes to all pages, and a page that changes one attribute.</summary>
internal static class EchoServer
{
    private const string Page = """
        <!doctype html><title>echo</title><body data-n="0">
        <script src="/lib/signalr/dist/browser/signalr.min.js"></script>
        <script src="/lib/signalr-protocol-msgpack/dist/browser/signalr-protocol-msgpack.min.js"></script>
        <script>
          const hub = new signalR.HubConnectionBuilder()
            .withUrl('/echo', { skipNegotiation: true, transport: signalR.HttpTransportType.WebSockets })
            .withHubProtocol(new signalR.protocols.msgpack.MessagePackHubProtocol()).build();
          hub.on('Echo', (n) => { document.body.dataset.n = n; });
          let count = 0;
          addEventListener('keydown', () => { void hub.invoke('Echo', ++count); });
          hub.start().then(() => { document.body.dataset.ready = 'yes'; });
        </script>
        """;

    public static async Task<WebApplication> StartAsync()
    {
        var builder = WebApplication.CreateBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddSignalR().AddMessagePackProtocol();
        var app = builder.Build();
        app.UseStaticFiles(new StaticFileOptions
        {
            FileProvider = new PhysicalFileProvider(Path.Combine(RepositoryRoot(), "overlay", "node_modules", "@microsoft")),
            RequestPath = "/lib",
        });
        app.MapGet("/", () => Results.Content(Page, "text/html"));
        app.MapHub<EchoHub>("/echo");
        await app.StartAsync();
        return app;
    }

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Companion.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("Run the benchmarks inside the repository.");
        return folder.FullName;
    }

    private sealed class EchoHub : Hub
    {
        public Task Echo(int count) => Clients.All.SendAsync("Echo", count);
    }
}
