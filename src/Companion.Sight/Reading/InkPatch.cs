namespace Companion.Sight.Reading;

/// <summary>Cuts one blob out of its cell: its own ink with its soft edge, and nothing of what stands beside it.</summary>
internal static class InkPatch
{
    /// <summary>Pixels of ground around the blob.</summary>
    public const int Room = 2;

    /// <summary>The blob's ink, 1 where it is darkest.</summary>
    /// <param name="blob">The blob.</param>
    /// <param name="ink">Its cell.</param>
    public static InkPlane Of(Blob blob, CellInk ink)
    {
        var (width, height) = (blob.Width + 2 * Room, blob.Height + 2 * Room);
        var plane = new float[width * height];
        foreach (var pixel in blob.Pixels)
        {
            var (x, y) = (pixel % ink.Cell.Width, pixel / ink.Cell.Width);
            for (var ny = Math.Max(0, y - 1); ny <= Math.Min(ink.Cell.Height - 1, y + 1); ny++)
            {
                for (var nx = Math.Max(0, x - 1); nx <= Math.Min(ink.Cell.Width - 1, x + 1); nx++)
                {
                    var target = (ny - blob.Top + Room) * width + nx - blob.Left + Room;
                    plane[target] = Math.Min(1, ink.Distance[ny * ink.Cell.Width + nx] / blob.Peak);
                }
            }
        }

        return new(width, height, plane);
    }
}
