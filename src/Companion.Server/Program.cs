using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.CommandLine;
using Companion.Server.Data;
using Companion.Server.Live;
using Companion.Server.Live.Audience;
using Companion.Server.Log;
using Companion.Server.Pages;
using Companion.Server.Relay;
using Companion.Server.Settings;

namespace Companion.Server;

/// <summary>The program.</summary>
internal static class Program
{
    /// <summary>Does what the command line says; without a word it runs the server.</summary>
    public static Task<int> Main(string[] words) => CommandRun.Run(words, Console.Out, Console.Error);

    /// <summary>Puts the server together.</summary>
    /// <param name="folder">The presenter's data.</param>
    /// <param name="settings">The settings.</param>
    /// <param name="adjust">Changes to the parts, as tests make them; null for none.</param>
    /// <exception cref="PlainException">A file that it needs cannot be used.</exception>
    public static WebApplication Build(DataFolder folder, ServerSettings settings, Action<WebApplicationBuilder>? adjust = null)
    {
        var builder = Begin(folder, settings);
        builder.Services.AddEventLog();
        builder.Services.AddAccess().AddKeys();
        builder.Services.AddLive(LadderFile.Read(folder));
        builder.Services.AddChat(folder, settings);
        builder.Services.AddPublishing(folder, settings);
        adjust?.Invoke(builder);

        var app = builder.Build();
        app.UseAccess();
        app.UseAudience();
        app.MapAccess();
        app.MapLive();
        app.MapChat();
        app.MapPages(Page.All);
        return app;
    }

    /// <summary>What all servers of ours begin with: where they listen and where they report.</summary>
    /// <param name="folder">The data.</param>
    /// <param name="settings">The settings.</param>
    /// <exception cref="PlainException">The certificate cannot be used.</exception>
    public static WebApplicationBuilder Begin(DataFolder folder, ServerSettings settings)
    {
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = AppContext.BaseDirectory, WebRootPath = "wwwroot" });
        builder.Services.AddSingleton(folder).AddSingleton(settings).AddSingleton(TimeProvider.System);
        builder.AddListener(folder, settings);
        builder.Services.AddLogFiles();
        return builder;
    }
}
