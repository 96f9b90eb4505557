namespace Companion.Browser.Tests.Following;

/// <summary>Made-up looks of the program in which a presenter solves.</summary>
internal static class SolvingLook
{
    /// <summary>A light page of elements, in the browser's sans-serif.</summary>
    public const string Plain = """
        <style>
          body { margin: 0; background: #f4f1ea; font: 16px sans-serif; color: #222 }
          h1 { margin: 18px 0 0 90px; font-size: 20px }
          #grid { position: absolute; left: 90px; top: 60px; width: 576px; height: 576px; background: #fff; border: 3px solid #222 }
          .cell { position: absolute; width: 64px; height: 64px; box-sizing: border-box; border: 1px solid #999; text-align: center }
          .cell.right { border-right: 3px solid #222 } .cell.under { border-bottom: 3px solid #222 }
          .cell.chosen { background: #cfe3ff }
          .digit { font-size: 42px; line-height: 62px; color: #1d5fb8 } .given { color: #111; font-weight: 600 }
          .corner { position: absolute; font-size: 15px; line-height: 15px; color: #333 }
          .item { position: relative; display: inline-block; line-height: 20px; margin: 0 2px }
          .list { position: absolute; inset: 0; font-size: 17px; line-height: 62px; color: #333 }
          .line { position: absolute; left: calc(50% - 8px); width: 16px; top: 50%; height: 1px; background: #111; transform: rotate(40deg) }
          #clock { position: absolute; left: 720px; top: 110px }
          #keys { position: absolute; left: 720px; top: 60px; line-height: 28px }
        </style>
        <h1>An evening's puzzle</h1><div id="grid"><div id="drawn"></div></div><p id="keys">Digits: D, corners: X, list: C, line: S, undo: Ctrl+Z</p><p id="clock"></p>
        <script>
          const places = [[5, 4], [46, 4], [5, 43], [46, 43]];
          window.look = (cells, chosen) => document.getElementById('drawn').replaceChildren(...cells.map((cell, at) => {
            const box = document.createElement('div');
            box.className = 'cell' + (at % 9 % 3 === 2 && at % 9 < 8 ? ' right' : '') + (Math.floor(at / 9) % 3 === 2 && at < 72 ? ' under' : '')
              + (chosen.includes(at) ? ' chosen' : '');
            box.style.left = at % 9 * 64 + 'px';
            box.style.top = Math.floor(at / 9) * 64 + 'px';
            const write = (to, kind, text) => {
              const span = document.createElement('span');
              span.className = kind;
              span.textContent = text;
              to.append(span);
              return span;
            };
            const mark = (to, kind, text) => {
              const span = write(to, kind, text);
              if (cell.struck.includes(text)) write(span, 'line', '');
              return span;
            };
            if (cell.digit) write(box, 'digit' + (cell.given ? ' given' : ''), cell.digit);
            else {
              [...cell.corners].sort().forEach((each, n) => [mark(box, 'corner', each).style.left, box.lastChild.style.top] = places[n].map((at) => at + 'px'));
              const list = write(box, 'list', '');
              [...cell.list].sort().forEach((each) => mark(list, 'item', each));
            }
            return box;
          }));
        </script>
        """;

    /// <summary>A dark page with one canvas, in a face like handwriting; the row, column and block of the chosen cell are tinted.</summary>
    /// <param name="face">The font, a TrueType file.</param>
    public static string DarkCanvas(byte[] face) => Canvas.Replace("FACE", Convert.ToBase64String(face), StringComparison.Ordinal);

    private const string Canvas = """
        <style>
          @font-face { font-family: hand; src: url(data:font/ttf;base64,FACE) }
          body { margin: 0; background: #14181f; font: 16px serif; color: #cdd6e4 }
          #grid { position: absolute; left: 320px; top: 70px; width: 576px; height: 576px }
          canvas { position: absolute; left: -4px; top: -4px }
          #clock { position: absolute; left: 40px; top: 110px } #warm { font-family: hand }
        </style>
        <p id="clock"></p><p id="warm">By candlelight</p><div id="grid"><canvas width="584" height="584"></canvas></div>
        <script>
          const pen = document.querySelector('canvas').getContext('2d');
          window.look = (cells, chosen) => {
            pen.setTransform(1, 0, 0, 1, 4, 4);
            pen.fillStyle = '#1d232d';
            pen.fillRect(-4, -4, 584, 584);
            const [row, column] = [Math.floor(chosen[0] / 9), chosen[0] % 9];
            cells.forEach((_, at) => {
              const [r, c] = [Math.floor(at / 9), at % 9];
              const isNear = r === row || c === column || (Math.floor(r / 3) === Math.floor(row / 3) && Math.floor(c / 3) === Math.floor(column / 3));
              pen.fillStyle = chosen.includes(at) ? '#3c4f2f' : isNear ? '#252d39' : '#1d232d';
              pen.fillRect(c * 64, r * 64, 64, 64);
            });
            for (let line = 0; line <= 9; line++) {
              pen.fillStyle = line % 3 === 0 ? '#8fa0ba' : '#4a566a';
              const thick = line % 3 === 0 ? 4 : 1;
              pen.fillRect(line * 64 - thick / 2, -2, thick, 580);
              pen.fillRect(-2, line * 64 - thick / 2, 580, thick);
            }
            pen.textAlign = 'center';
            pen.textBaseline = 'middle';
            cells.forEach((cell, at) => {
              const [x, y] = [at % 9 * 64 + 32, Math.floor(at / 9) * 64 + 34];
              const write = (text, size, colour, right, down) => {
                pen.font = size + 'px hand';
                pen.fillStyle = colour;
                pen.fillText(text, x + right, y + down);
              };
              const mark = (text, right, down) => {
                write(text, 20, '#b9c4d4', right, down);
                if (cell.struck.includes(text)) pen.fillRect(x + right - 8, y + down - 1, 16, 2);
              };
              if (cell.digit) write(cell.digit, 46, cell.given ? '#f2f5fa' : '#ffb454', 0, 0);
              else {
                [...cell.corners].sort().forEach((each, n) => mark(each, n % 2 ? 22 : -22, n < 2 ? -22 : 20));
                [...cell.list].sort().forEach((each, n, { length }) => mark(each, (n - (length - 1) / 2) * 15, 0));
              }
            });
          };
        </script>
        """;
}
