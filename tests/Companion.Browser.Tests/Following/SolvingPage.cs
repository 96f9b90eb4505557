using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>
/// A made-up program in which a presenter solves: a page with a grid, digits, marks in corners and in the middle, lines through
/// marks, a selection and undo, in one of its looks. It knows nothing of the companion.
/// </summary>
internal sealed class SolvingPage
{
    /// <summary>What stands in its title bar; the browser is told to show the page of this title.</summary>
    public const string Title = "Solving page";

    private const string Head = "<!doctype html><html lang='en'><meta charset='utf-8'><title>" + Title + "</title>";

    // What the program does. A look has an element #grid and draws cells by window.look(cells, chosen).
    private const string Program = """
        <script>
          let cells, chosen = [], way = 'd', past = [];
          // A browser shows a screen whose page it has drawn anew; this one tells the time of the evening.
          let seconds = 0;
          setInterval(() => { document.getElementById('clock').textContent = 'Solving for ' + ++seconds + ' s'; }, 1000);
          const grid = document.getElementById('grid');
          for (let at = 0; at < 81; at++) {
            const place = document.createElement('div');
            place.dataset.cell = 'r' + (Math.floor(at / 9) + 1) + 'c' + (at % 9 + 1);
            place.style.cssText = `position: absolute; width: 64px; height: 64px; left: ${at % 9 * 64}px; top: ${Math.floor(at / 9) * 64}px`;
            place.onclick = (event) => { chosen = event.shiftKey ? [...chosen, at] : [at]; draw(); };
            grid.append(place);
          }
          const draw = () => window.look(cells, chosen);
          const toggled = (marks, mark) => marks.includes(mark) ? marks.filter((other) => other !== mark) : [...marks, mark];
          const enter = (change) => {
            past.push(cells);
            cells = cells.map((cell, at) => chosen.includes(at) && !cell.given ? change(cell) : cell);
            draw();
          };
          window.begin = (givens) => {
            cells = [...givens].map((digit) => ({ digit: digit === '0' ? '' : digit, given: digit !== '0', corners: [], list: [], struck: [] }));
            [chosen, past] = [[], []];
            draw();
          };
          window.write = (text) => enter((cell) => ({ ...cell, digit: text }));
          window.writeGiven = (at, text) => { cells = cells.map((cell, index) => index === at ? { ...cell, digit: text } : cell); draw(); };
          addEventListener('keydown', (event) => {
            if (event.ctrlKey && event.key === 'z') { cells = past.pop() ?? cells; draw(); event.preventDefault(); }
            else if ('dxcs'.includes(event.key)) way = event.key;
            else if (event.key === 'Backspace') enter((cell) => cell.digit ? { ...cell, digit: '' } : { ...cell, corners: [], list: [], struck: [] });
            else if (/^[1-9]$/.test(event.key))
              enter((cell) => way === 'd' ? { ...cell, digit: event.key, corners: [], list: [], struck: [] }
                : way === 'x' ? { ...cell, corners: toggled(cell.corners, event.key) }
                : way === 's' ? { ...cell, struck: toggled(cell.struck, event.key) } : { ...cell, list: toggled(cell.list, event.key) });
          });
        </script>
        """;

    private SolvingPage(IPage page) => Page = page;

    public IPage Page { get; }

    /// <summary>The page itself; it shows a puzzle when its <c>begin</c> is called.</summary>
    /// <param name="look">How it looks.</param>
    public static string Html(string look) => Head + look + Program;

    /// <param name="context">Where to open it.</param>
    /// <param name="givens">The puzzle, 81 characters.</param>
    /// <param name="look">How it looks; plain by default.</param>
    public static async Task<SolvingPage> OpenAsync(IBrowserContext context, string givens, string? look = null)
    {
        var page = await context.NewPageAsync();
        await page.SetContentAsync(Html(look ?? SolvingLook.Plain));
        await page.EvaluateAsync("document.fonts.ready");
        await page.EvaluateAsync("givens => window.begin(givens)", givens);
        return new(page);
    }

    /// <summary>Chooses cells as a hand does, and presses keys.</summary>
    public async Task PlayAsync(string cells, params string[] keys)
    {
        var isFirst = true;
        foreach (var cell in cells.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            await Page.Locator($"[data-cell={cell}]").ClickAsync(new() { Modifiers = isFirst ? [] : [KeyboardModifier.Shift] });
            isFirst = false;
        }

        foreach (var key in keys)
            await Page.Keyboard.PressAsync(key);
    }

    /// <summary>Something stands in a cell that is no digit.</summary>
    public async Task ScribbleAsync(string cell, string text)
    {
        await PlayAsync(cell);
        await Page.EvaluateAsync("text => window.write(text)", text);
    }

    /// <summary>Another text stands in the cell of a given.</summary>
    public Task WriteGivenAsync(int cell, string text) =>
        Page.EvaluateAsync("([cell, text]) => window.writeGiven(cell, text)", new object[] { cell, text });
}
