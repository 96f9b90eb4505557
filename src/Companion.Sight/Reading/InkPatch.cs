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

    /// <summary>What is left of a patch whose blob has lost some of its rows.</summary>
    /// <param name="patch">The patch of a blob.</param>
    /// <param name="above">How many of its uppermost rows are gone.</param>
    /// <param name="below">How many of its lowest rows are gone.</param>
    public static InkPlane Cut(InkPlane patch, int above, int below)
    {
        var rows = patch.Height - above - below;
        var plane = new float[rows * patch.Width];
        for (var row = above > 0 ? Room : 0; row < (below > 0 ? rows - Room : rows); row++)
            patch.Row(row + above).CopyTo(plane.AsSpan(row * patch.Width));
        return new(patch.Width, rows, plane);
    }

    /// <summary>The patch as it would be if the mark were set larger or smaller, and stood otherwise between the pixels.</summary>
    /// <param name="patch">The patch of a blob.</param>
    /// <param name="height">How high the blob is then, in pixels.</param>
    /// <param name="right">How far it stands to the right of where it was, in pixels below 1.</param>
    /// <param name="down">How far below.</param>
    public static InkPlane Reset(InkPlane patch, int height, float right, float down)
    {
        var scale = height / (float)(patch.Height - 2 * Room);
        var width = Math.Max(1, (int)MathF.Round((patch.Width - 2 * Room) * scale)) + 2 * Room;
        var plane = new float[width * (height + 2 * Room)];
        for (var pixel = 0; pixel < plane.Length; pixel++)
        {
            var (x, y) = (From(pixel % width - right), From(pixel / width - down));
            plane[pixel] = Between(Between(At(x, y), At(x + 1, y), x), Between(At(x, y + 1), At(x + 1, y + 1), x), y);
        }

        return new(width, height + 2 * Room, plane);

        // Middles of pixels; the room around the blob stays as wide as it was.
        float From(float at) => (at - Room + 0.5f) / scale - 0.5f + Room;

        static float Between(float one, float other, float at) => one + (other - one) * (at - MathF.Floor(at));

        float At(float x, float y)
        {
            var (column, row) = ((int)MathF.Floor(x), (int)MathF.Floor(y));
            return column >= 0 && row >= 0 && column < patch.Width && row < patch.Height ? patch.Row(row)[column] : 0;
        }
    }
}
