using System.Net;
using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Live.Following;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;
using SkiaSharp;

namespace Companion.Server.Tests.Live.Following;

/// <summary>A companion whose reader is prepared, with the presenter's panel, which posts pictures.</summary>
internal sealed class FollowedScreen : IAsyncDisposable
{
    private const string Page = "this-page";

    private FollowedScreen(RunningCompanion companion, OpenPage panel, HttpClient browser, PreparedReader reader) =>
        (Companion, Panel, Browser, Reader) = (companion, panel, browser, reader);

    public RunningCompanion Companion { get; }

    public OpenPage Panel { get; }

    /// <summary>The panel's way of posting; it has the presenter's key.</summary>
    public HttpClient Browser { get; }

    public PreparedReader Reader { get; }

    /// <summary>A picture that any decoder takes.</summary>
    public static byte[] Picture { get; } = Draw(120);

    /// <summary>Starts with a puzzle loaded, and follows the screen.</summary>
    public static async Task<FollowedScreen> Start(string? folder = null, bool withMarks = true)
    {
        var reader = new PreparedReader();
        var companion = await RunningCompanion.Start(folder, builder => builder.Services.AddSingleton<IScreenReader>(reader));
        var panel = await companion.OpenDesk();
        await panel.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        reader.Reading = Readings.Of(companion.Session.State.Grid);
        var browser = companion.Browser();
        browser.DefaultRequestHeaders.Authorization = new("Bearer", companion.Keys[AccessRole.Presenter].Reveal());
        await panel.Do("FollowScreen", Page, withMarks);
        return new(companion, panel, browser, reader);
    }

    /// <summary>Posts a crop once.</summary>
    public async Task<JsonElement> Look()
    {
        using var answer = await Post(Picture);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await Read(answer);
    }

    /// <summary>Posts the crop until it was seen twice.</summary>
    public async Task<JsonElement> LookTwice()
    {
        await Look();
        return await Look();
    }

    /// <summary>Posts anything.</summary>
    public Task<HttpResponseMessage> Post(
        byte[] body, string corners = "10,10,110,10,110,110,10,110", string page = Page, string path = HubPaths.Screen, string picture = "") => Browser.PostAsync(
        new Uri($"{path}?page={page}&corners={corners}&{picture}", UriKind.Relative), new ByteArrayContent(body), TestContext.Current.CancellationToken);

    /// <summary>The answer's JSON.</summary>
    public static async Task<JsonElement> Read(HttpResponseMessage answer) =>
        JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).RootElement;

    public async ValueTask DisposeAsync()
    {
        Browser.Dispose();
        await Panel.DisposeAsync();
        await Companion.DisposeAsync();
    }

    /// <summary>A square picture of one colour.</summary>
    public static byte[] Draw(int side, SKColor? colour = null)
    {
        using var bitmap = new SKBitmap(side, side);
        bitmap.Erase(colour ?? SKColors.White);
        using var file = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return file.ToArray();
    }
}
