using System.Collections.Immutable;
using System.CommandLine;
using Companion.Drawing.Colours;
using Companion.Drawing.Stills;
using Companion.Server.Data;

namespace Companion.Server.CommandLine;

/// <summary>What a command that draws a picture takes: the size, the theme and the file, whose ending says what it becomes.</summary>
internal sealed class PictureOptions
{
    private readonly ImageSize _usual;
    private readonly Option<ImageSize> _size;
    private readonly Option<Theme> _theme = new Option<Theme>("--theme") { Description = "Light or dark; light by default." }
        .AcceptOnlyFromAmong("light", "dark");
    private readonly Option<string> _output;

    /// <summary>The options.</summary>
    /// <param name="output">What is said of the file.</param>
    /// <param name="width">The usual width.</param>
    /// <param name="height">The usual height.</param>
    public PictureOptions(string output, int width = 1280, int height = 720)
    {
        _usual = new(width, height);
        _size = PlainOption.Of(
            "--size",
            $"Width and height in pixels; {width}x{height} by default.",
            ImageSize.Read,
            "a size such as 1280x720, 240 to 8192 each way,");
        _output = new("--out") { Description = output, Required = true, HelpName = "file" };
    }

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_size);
        command.Add(_theme);
        command.Add(_output);
    }

    /// <summary>The theme.</summary>
    /// <param name="asked">What was typed.</param>
    public Theme Theme(ParseResult asked) => asked.GetValue(_theme);

    /// <summary>Draws into the file.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="what">What is being done, as in "Drawing the still".</param>
    /// <param name="draw">Makes what to draw, of the size that was asked for.</param>
    /// <param name="cancel">Leaves the file as it was.</param>
    /// <returns>What the command leaves behind.</returns>
    /// <exception cref="PlainException">The file cannot be written, or its ending is none of those that are known.</exception>
    public int Write(ParseResult asked, string what, Func<ImageSize, Artwork> draw, CancellationToken cancel) =>
        WriteAll(asked, what, [draw], cancel);

    /// <summary>Draws several; those after the first go into files of their own, with their number at the end of the name.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="what">What is being done.</param>
    /// <param name="draws">Each makes what to draw, of the size that was asked for.</param>
    /// <param name="cancel">Leaves all files as they were.</param>
    /// <returns>What the command leaves behind.</returns>
    /// <exception cref="PlainException">A file cannot be written, or its ending is none of those that are known.</exception>
    public int WriteAll(ParseResult asked, string what, ImmutableArray<Func<ImageSize, Artwork>> draws, CancellationToken cancel)
    {
        var name = asked.GetRequiredValue(_output);
        var format = FormatOf(name);
        var files = Enumerable.Range(1, draws.Length).Select(number => OutputFile.At(Numbered(name, number), _output.Name)).ToList();
        var made = new Tally();
        using (LongWork.Begin(asked.InvocationConfiguration, what, () => $"{made.Value} of {draws.Length}"))
        {
            OutputFile.WriteAll(
                [.. files.Zip(draws, (file, draw) => (file, (Func<byte[]>)(() => format(draw(asked.GetValue(_size) ?? _usual)))))], made, cancel);
        }

        foreach (var file in files)
            file.Report(asked.InvocationConfiguration.Output, "Drawn");
        return ExitCode.Fine;
    }

    private static string Numbered(string name, int number) => number == 1
        ? name
        : Path.Combine(Path.GetDirectoryName(name) ?? "", $"{Path.GetFileNameWithoutExtension(name)}-{number}{Path.GetExtension(name)}");

    private static Func<Artwork, byte[]> FormatOf(string name) => Path.GetExtension(name).ToUpperInvariant() switch
    {
        ".PNG" => PngImage.Of,
        ".SVG" => SvgImage.Of,
        _ => throw new PlainException($"{name} says not what to draw: end its name with .png or .svg."),
    };
}
