using Microsoft.Playwright;

namespace Companion.Browser.Tests.Following;

/// <summary>
/// A made-up program in which a presenter solves: a page with a grid, digits, marks in corners and in the middle, a selection and undo.
/// It knows nothing of the companion.
/// </summary>
internal sealed class SolvingPage
{
    /// <summary>What stands in its title bar; the browser is told to show the page of this title.</summary>
    public const string Title = "Solving page";

    private const string Html = """
        <!doctype html><html lang="en"><meta charset="utf-8"><title>Solving page</title>
        <style>
          body { margin: 0; background: #f4f1ea; font: 16px sans-serif; color: #222 }
          h1 { margin: 18px 0 0 90px; font-size: 20px }
          #grid { position: absolute; left: 90px; top: 60px; width: 576px; height: 576px; background: #fff; border: 3px solid #222 }
          .cell { position: absolute; width: 64px; height: 64px; box-sizing: border-box; border: 1px solid #999; text-align: center }
          .cell.right { border-right: 3px solid #222 } .cell.under { border-bottom: 3px solid #222 }
          .cell.chosen { background: #cfe3ff }
          .digit { font-size: 42px; line-height: 62px; color: #1d5fb8 } .given { color: #111; font-weight: 600 }
          .corner { position: absolute; font-size: 15px; line-height: 15px; color: #333 }
          .list { position: absolute; inset: 0; font-size: 17px; line-height: 62px; color: #333 }
          #clock { position: absolute; left: 720px; top: 110px }
          #keys { position: absolute; left: 720px; top: 60px; line-height: 28px }
        </style>
        <h1>An evening's puzzle</h1><div id="grid"></div><p id="keys">Digits: D, corners: X, list: C, undo: Ctrl+Z</p><p id="clock"></p>
        <script>
          const places = [[5, 4], [46, 4], [5, 43], [46, 43]];
          let cells, chosen = [], way = 'd', past = [];
          // A browser shows a screen whose page it has drawn anew; this one tells the time of the evening.
          let seconds = 0;
          setInterval(() => { document.getElementById('clock').textContent = 'Solving for ' + ++seconds + ' s'; }, 1000);
          const grid = document.getElementById('grid');
          const draw = () => grid.replaceChildren(...cells.map((cell, at) => {
            const box = document.createElement('div');
            box.className = 'cell' + (at % 9 % 3 === 2 && at % 9 < 8 ? ' right' : '') + (Math.floor(at / 9) % 3 === 2 && at < 72 ? ' under' : '')
              + (chosen.includes(at) ? ' chosen' : '');
            box.style.left = at % 9 * 64 + 'px';
            box.style.top = Math.floor(at / 9) * 64 + 'px';
            box.dataset.cell = 'r' + (Math.floor(at / 9) + 1) + 'c' + (at % 9 + 1);
            const write = (kind, text, place) => {
              const span = document.createElement('span');
              span.className = kind;
              span.textContent = text;
              if (place) [span.style.left, span.style.top] = place.map((n) => n + 'px');
              box.append(span);
            };
            if (cell.digit) write('digit' + (cell.given ? ' given' : ''), cell.digit);
            else {
              [...cell.corners].sort().forEach((mark, n) => write('corner', mark, places[n]));
              if (cell.list.length > 0) write('list', [...cell.list].sort().join(''));
            }
            box.onclick = (event) => { chosen = event.shiftKey ? [...chosen, at] : [at]; draw(); };
            return box;
          }));
          const toggled = (marks, mark) => marks.includes(mark) ? marks.filter((other) => other !== mark) : [...marks, mark];
          const enter = (change) => {
            past.push(cells);
            cells = cells.map((cell, at) => chosen.includes(at) && !cell.given ? change(cell) : cell);
            draw();
          };
          window.begin = (givens) => {
            cells = [...givens].map((digit) => ({ digit: digit === '0' ? '' : digit, given: digit !== '0', corners: [], list: [] }));
            [chosen, past] = [[], []];
            draw();
          };
          window.write = (text) => enter((cell) => ({ ...cell, digit: text }));
          addEventListener('keydown', (event) => {
            if (event.ctrlKey && event.key === 'z') { cells = past.pop() ?? cells; draw(); event.preventDefault(); }
            else if ('dxc'.includes(event.key)) way = event.key;
            else if (event.key === 'Backspace') enter((cell) => cell.digit ? { ...cell, digit: '' } : { ...cell, corners: [], list: [] });
            else if (/^[1-9]$/.test(event.key))
              enter((cell) => way === 'd' ? { ...cell, digit: event.key, corners: [], list: [] }
                : way === 'x' ? { ...cell, corners: toggled(cell.corners, event.key) } : { ...cell, list: toggled(cell.list, event.key) });
          });
        </script>
        """;

    private SolvingPage(IPage page) => Page = page;

    public IPage Page { get; }

    public static async Task<SolvingPage> OpenAsync(IBrowserContext context, string givens)
    {
        var page = await context.NewPageAsync();
        await page.SetContentAsync(Html);
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
}
