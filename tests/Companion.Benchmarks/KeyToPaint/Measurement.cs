using Microsoft.Playwright;

namespace Companion.Benchmarks.KeyToPaint;

/// <summary>Times from a key press in one page to the painted change in another, in milliseconds.</summary>
internal static class Measurement
{
    // The overlay lets pictures appear at most three times a second; a shorter pause would measure that.
    private const int PauseMilliseconds = 400;
    private const int WarmUp = 5;

    // Waiting for a page's own figure needs eval, which the pages' policy forbids.
    public static BrowserNewContextOptions Context => new() { BypassCSP = true };

    public static async Task<double[]> OfAsync(IPage keys, IPage paint, int samples, IReadOnlyList<string> cycle)
    {
        await keys.EvaluateAsync(PaintClock.OnKey);
        await paint.EvaluateAsync(PaintClock.OnPaint);
        var times = new List<double>();
        for (var sample = 0; sample < samples + WarmUp; sample++)
        {
            await paint.EvaluateAsync("window.painted = 0");
            await keys.Keyboard.PressAsync(cycle[sample % cycle.Count]);
            await paint.WaitForFunctionAsync("window.painted > 0");
            var time = await paint.EvaluateAsync<double>("window.painted") - await keys.EvaluateAsync<double>("window.pressed");
            if (sample >= WarmUp)
                times.Add(time);
            await Task.Delay(PauseMilliseconds);
        }

        times.Sort();
        return [.. times];
    }
}
