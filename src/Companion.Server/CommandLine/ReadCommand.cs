using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Companion.Server.Wire;
using Companion.Sight;

namespace Companion.Server.CommandLine;

/// <summary><c>companion read</c>: what stands on a picture of a grid.</summary>
internal static class ReadCommand
{
    // Many times what a picture of as many pixels as are read has.
    private const int LargestFile = 128 * 1024 * 1024;

    /// <summary>The command.</summary>
    public static Command Make()
    {
        var image = new Argument<string>("image") { Description = "A PNG, JPEG or WebP: a picture of a screen, or a photograph taken nearly straight. A hyphen reads what is piped in." };
        var json = new Option<bool>("--json")
        {
            Description = "One JSON object instead of text: grid (81 characters, . for cells that are empty or unsure), place (the grid's four "
                + "corners in pixels, from the upper left clockwise), givens and placed (cells; digits that nothing tells apart count as givens), "
                + "marks (cell, standing, struck) and unsure (cell, digit as it may be or null, marks as they may be, certainty from 0 to 1).",
        };
        var command = new Command("read", "Reads the grid on a picture: nine lines, which check takes too. Cells that are unsure are left out and named.")
        {
            image, json,
        };
        command.SetAction(asked => Run(asked.GetRequiredValue(image), asked.GetValue(json), asked.InvocationConfiguration));
        return command;
    }

    private static int Run(string image, bool json, InvocationConfiguration streams)
    {
        var frame = Frame.Decode(Bytes(image)) ?? throw new PlainException(string.Create(
            CultureInfo.InvariantCulture,
            $"{Named(image)} is no PNG, JPEG or WebP, is damaged, or has more than {Frame.MostPixels:N0} pixels: save it as one of these, or smaller."));
        var place = GridFinder.Find(frame) ?? throw new PlainException(
            "No grid was found: show all of it with its lines, as straight and as large as can be, at least 300 pixels wide.");
        var result = ReadResult.Of(place, BoardReader.Read(frame, place, GlyphReader.Standard, Lessons.None));
        if (json)
        {
            streams.Output.WriteLine(JsonSerializer.Serialize(result, WireJson.Options));
        }
        else
        {
            foreach (var row in result.Grid.Chunk(9))
                streams.Output.WriteLine(new string(row));
            if (result.Unsure.Length > 0)
                streams.Error.WriteLine($"Not read surely and left out: {string.Join(", ", result.Unsure)}. Look at the picture there.");
        }

        return result.Unsure.Length == 0 ? ExitCode.Fine : ExitCode.BadPuzzle;
    }

    private static byte[] Bytes(string image)
    {
        try
        {
            using var picture = image == "-" ? Console.OpenStandardInput() : File.OpenRead(image);
            using var kept = new MemoryStream();
            var part = new byte[81920];
            for (var read = picture.Read(part); read > 0; read = picture.Read(part))
            {
                kept.Write(part, 0, read);
                if (kept.Length > LargestFile)
                    throw new PlainException($"{Named(image)} is larger than {LargestFile / 1024 / 1024} MB: save it smaller, or cut it to the grid.");
            }

            return kept.ToArray();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new PlainException($"{Named(image)} cannot be read: name a picture that is there, or - for one that is piped in.", fault);
        }
    }

    private static string Named(string image) => image == "-" ? "What was piped in" : $"The file {image}";
}
