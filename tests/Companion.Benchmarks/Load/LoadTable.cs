using System.Globalization;
using System.Text.Json;
using Companion.Browser.Tests;

namespace Companion.Benchmarks.Load;

/// <summary>
/// How long an entry takes to the presenter's panel and the overlay while a chat is busy and viewers follow, and how long a view takes
/// from the first viewer to the others. Server, chat, viewers and presenter are processes of one machine; twenty viewers read a few
/// bytes a second, and twenty never read.
/// </summary>
internal static class LoadTable
{
    private const int Entries = 300;
    private const int LinesPerSecond = 200;
    private const int BadReaders = 20;

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(150);

    /// <summary>Measures with each number of viewers in turn.</summary>
    /// <param name="output">Where the table goes.</param>
    /// <param name="viewers">The numbers.</param>
    public static async Task PrintAsync(TextWriter output, IEnumerable<int> viewers)
    {
        output.WriteLine("| viewers | lines a second | entry to panel, median | 99 % | to overlay, median | 99 % | views | fan-out, median | 99 % | last |");
        output.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var count in viewers)
            output.WriteLine(await RowAsync(count));
    }

    private static async Task<string> RowAsync(int count)
    {
        await using var chat = new BusyChat();
        await chat.StartAsync();
        await using var companion = await CompanionProcess.StartAsync(JsonSerializer.Serialize(new
        {
            chat = chat.Settings,
            asks = new { delaySeconds = 0 }, // the viewers' views go out with the entries: the worst case
            audience = new { door = "open", mostViewers = 10_000, mostPerAddress = 10_000 },
        }));
        var server = new Uri(companion.Presenter.GetLeftPart(UriPartial.Authority));
        var keys = Keys(companion);
        await using var presentation = await Presentation.OpenAsync(server, role => keys[role]);
        await using var crowd = await CrowdAsync(server, keys["viewer"], count);
        chat.Talk(LinesPerSecond);
        var (before, began) = (chat.Written, TimeProvider.System.GetTimestamp());
        var times = await presentation.PlayAsync(Puzzles.Sample(1)[0], Entries, Pause);
        var lines = (chat.Written - before) / TimeProvider.System.GetElapsedTime(began).TotalSeconds;
        var fanOut = crowd is null ? null : FanOut.Of(await crowd.ArrivalsAsync(), crowd.Size.Prompt);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {count:N0} | {lines:F0} | {At(times.ToPanel, 0.5):F1} | {At(times.ToPanel, 0.99):F1} | {At(times.ToOverlay, 0.5):F1} | {At(times.ToOverlay, 0.99):F1} | {fanOut}");
    }

    private static async Task<Crowd?> CrowdAsync(Uri server, string key, int count) => count == 0
        ? null
        : await Crowd.ConnectAsync(new Uri(server, "/hubs/audience"), key, new(count - (2 * BadReaders), BadReaders, BadReaders));

    private static Dictionary<string, string> Keys(CompanionProcess companion) =>
        JsonSerializer.Deserialize<Dictionary<string, string>>(File.ReadAllText(Path.Combine(companion.Folder, "keys.json")))!;

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];
}
