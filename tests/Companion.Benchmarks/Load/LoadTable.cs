using System.Globalization;

namespace Companion.Benchmarks.Load;

/// <summary>
/// How long an entry takes to the presenter's panel and the overlay, and a view from the first viewer to the others, by the number of
/// viewers and of audience servers.
/// </summary>
internal static class LoadTable
{
    /// <summary>Measures each case in turn.</summary>
    /// <param name="output">Where the table goes.</param>
    /// <param name="cases">Viewers and audience servers, such as <c>2000</c>, or <c>2000/3</c> for viewers of three audience servers.</param>
    public static async Task PrintAsync(TextWriter output, IEnumerable<string> cases)
    {
        output.WriteLine("| viewers | audience servers | lines a second | entry to panel, median | 99 % | to overlay, median | 99 % | views | fan-out, median | 99 % | last |");
        output.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (var wanted in cases)
        {
            var numbers = wanted.Split('/').Select(number => int.Parse(number, CultureInfo.InvariantCulture)).ToArray();
            output.WriteLine(await RowAsync(numbers[0], numbers.Length > 1 ? numbers[1] : 0));
        }
    }

    private static async Task<string> RowAsync(int viewers, int servers)
    {
        var run = await LoadRun.OfAsync(viewers, servers);
        var (panel, overlay) = (run.Entries.ToPanel, run.Entries.ToOverlay);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {viewers:N0} | {servers} | {run.LinesPerSecond:F0} | {At(panel, 0.5):F1} | {At(panel, 0.99):F1} | {At(overlay, 0.5):F1} | {At(overlay, 0.99):F1} | {Columns(run.FanOut)} |");
    }

    private static string Columns(FanOut? fanOut) => fanOut is null
        ? "| | |"
        : string.Create(
            CultureInfo.InvariantCulture, $"{fanOut.Views} | {At(fanOut.Times, 0.5):F1} | {At(fanOut.Times, 0.99):F1} | {fanOut.Times[^1]:F1}");

    private static double At(double[] sorted, double share) => sorted[(int)(share * (sorted.Length - 1))];
}
