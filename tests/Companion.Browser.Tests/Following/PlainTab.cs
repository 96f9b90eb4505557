namespace Companion.Browser.Tests.Following;

/// <summary>A tab of a <see cref="PlainBrowser"/>.</summary>
internal sealed class PlainTab(PlainBrowser browser, string target, string session)
{
    /// <summary>Brings it to the front, which hides the one that was there.</summary>
    public Task ShowAsync() => browser.AskAsync("Target.activateTarget", new() { ["targetId"] = target });

    /// <summary>What a piece of script comes to, as text. It counts as a person's doing.</summary>
    public async Task<string> EvaluateAsync(string script)
    {
        var answer = await browser.AskAsync(
            "Runtime.evaluate", new() { ["expression"] = script, ["awaitPromise"] = true, ["returnByValue"] = true, ["userGesture"] = true }, session);
        return answer["exceptionDetails"] is { } fault ? throw new InvalidOperationException(fault.ToJsonString()) : $"{answer["result"]!["value"]}";
    }

    /// <summary>Waits until a script says true.</summary>
    public async Task UntilAsync(string script)
    {
        try
        {
            await PlainBrowser.Until(async () => await EvaluateAsync($"!!({script})") == "true");
        }
        catch (OperationCanceledException)
        {
            Assert.Fail($"{script} did not come true on this page: {await EvaluateAsync("document.body.innerText")}");
        }
    }

    /// <summary>Clicks a button by its label, when there is one.</summary>
    public async Task ClickAsync(string label)
    {
        var button = $"[...document.querySelectorAll('button:enabled')].find((each) => each.textContent.startsWith('{label}'))";
        await UntilAsync(button);
        await EvaluateAsync($"{button}.click()");
    }

    /// <summary>Presses a key.</summary>
    public Task PressAsync(string key, bool withControl = false) => EvaluateAsync(
        $"document.body.dispatchEvent(new KeyboardEvent('keydown', {{ key: '{key}', ctrlKey: {(withControl ? "true" : "false")}, bubbles: true }}))");
}
