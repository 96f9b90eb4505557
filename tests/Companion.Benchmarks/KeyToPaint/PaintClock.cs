namespace Companion.Benchmarks.KeyToPaint;

/// <summary>What both pages of a measurement are given, so that the two sides are timed in the same way.</summary>
internal static class PaintClock
{
    /// <summary>Notes when a key went down, on the clock that all pages of a machine share.</summary>
    public const string OnKey = """
        window.pressed = 0;
        addEventListener('keydown', () => { window.pressed = performance.timeOrigin + performance.now(); }, { capture: true });
        """;

    /// <summary>Notes when the frame with the next change of the page has been painted: after the frame's own callback.</summary>
    public const string OnPaint = """
        window.painted = 0;
        new MutationObserver(() => {
          if (window.waiting) return;
          window.waiting = true;
          requestAnimationFrame(() => {
            const after = new MessageChannel();
            after.port1.onmessage = () => { window.waiting = false; window.painted = performance.timeOrigin + performance.now(); };
            after.port2.postMessage(null);
          });
        }).observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        """;
}
