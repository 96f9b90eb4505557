using System.Text.Json;
using Companion.Browser.Tests;

namespace Companion.Benchmarks.Load;

/// <summary>
/// One run: a presenter enters digits while a chat is busy and viewers follow. All are processes of one machine. Twenty viewers read a
/// few bytes a second, and twenty never read.
/// </summary>
/// <param name="Entries">How long entries took.</param>
/// <param name="FanOut">How long views took; null without viewers.</param>
/// <param name="LinesPerSecond">What was written in the chat.</param>
internal sealed record LoadRun(EntryTimes Entries, FanOut? FanOut, double LinesPerSecond)
{
    private const int EntryCount = 300;
    private const int Lines = 200;
    private const int BadReaders = 20;

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(150);

    // As many viewers as are wanted, all from this machine.
    private static readonly object Crowded = new { door = "open", mostViewers = 100_000, mostPerAddress = 100_000 };

    /// <summary>Runs.</summary>
    /// <param name="viewers">How many viewers.</param>
    /// <param name="servers">On how many audience servers they are; 0 for the presenter's own server.</param>
    public static async Task<LoadRun> OfAsync(int viewers, int servers)
    {
        await using var chat = new BusyChat();
        await chat.StartAsync();
        await using var relay = servers > 0 ? await AudienceServers.StartAsync(servers, Crowded) : null;
        await using var companion = await CompanionProcess.StartAsync(JsonSerializer.Serialize(new
        {
            chat = chat.Settings,
            relay = new { redis = relay?.Redis ?? "" },
            asks = new { delaySeconds = 0 }, // the viewers' views go out with the entries: the worst case
            audience = Crowded,
        }));
        var server = new Uri(companion.Presenter.GetLeftPart(UriPartial.Authority));
        var keys = JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(Path.Combine(companion.Folder, "keys.json")))!;
        await using var presentation = await Presentation.OpenAsync(server, role => keys[role]);
        if (relay is not null)
            await relay.FollowAsync();
        await using var crowd = viewers == 0
            ? null
            : await Crowd.ConnectAsync(relay?.Addresses ?? [server], keys["viewer"], new(viewers - (2 * BadReaders), BadReaders, BadReaders));

        chat.Talk(Lines);
        var (before, began) = (chat.Written, TimeProvider.System.GetTimestamp());
        var entries = await presentation.PlayAsync(Puzzles.Sample(1)[0], EntryCount, Pause);
        var lines = (chat.Written - before) / TimeProvider.System.GetElapsedTime(began).TotalSeconds;
        return new(entries, crowd is null ? null : FanOut.Of(await crowd.ArrivalsAsync(), crowd.Size.Prompt), lines);
    }
}
