using Companion.Server.Access;
using Companion.Server.Chat;
using Companion.Server.CommandLine;
using Companion.Server.Data;
using Companion.Server.Live;
using Companion.Server.Live.Audience;
using Companion.Server.Log;
using Companion.Server.Pages;
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
        var builder = WebApplication.CreateEmptyBuilder(new() { ContentRootPath = AppContext.BaseDirectory, WebRootPath = "wwwroot" });
        builder.Services.AddSingleton(folder).AddSingleton(settings).AddSingleton(TimeProvider.System);
        builder.AddListener(folder, settings);
        builder.Services.AddLog();
        builder.Services.AddAccess();
        builder.Services.AddLive(LadderFile.Read(folder));
        builder.Services.AddChat(folder, settings);
        adjust?.Invoke(builder);

        var app = builder.Build();
        app.UseAccess();
        app.UseAudience();
        app.MapAccess();
        app.MapLive();
        app.MapChat();
        app.MapPages();
        return app;
    }
}
