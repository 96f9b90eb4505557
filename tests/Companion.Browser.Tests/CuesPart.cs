using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>The cue list of a panel, the presenter's or a co-host's.</summary>
/// <param name="page">The panel.</param>
public sealed class CuesPart(IPage page)
{
    public ILocator Rows => page.GetByRole(AriaRole.Listbox, new() { Name = "Cue list" }).GetByRole(AriaRole.Option);

    public ILocator Call => page.GetByRole(AriaRole.Region, new() { Name = "Cue for the presenter" });

    public ILocator Writer => page.GetByLabel("Talking point");

    public async Task WriteAsync(string text)
    {
        await Writer.FillAsync(text);
        await Writer.PressAsync("Enter");
        await Assertions.Expect(Writer).ToHaveValueAsync("");
    }

    /// <summary>Picks a row by its words and presses keys on the list.</summary>
    public async Task PressAsync(string words, string key)
    {
        await Rows.Filter(new() { HasText = words }).ClickAsync();
        await page.Keyboard.PressAsync(key);
    }
}
