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
    public int Write(ParseResult asked, string what, Func<ImageSize, Artwork> draw, CancellationToken cancel)
    {
        var name = asked.GetRequiredValue(_output);
        var format = FormatOf(name);
        var file = OutputFile.At(name, _output.Name);
        using (LongWork.Begin(asked.InvocationConfiguration, what))
            file.Write(format(draw(asked.GetValue(_size) ?? _usual)), cancel);
        asked.InvocationConfiguration.Output.WriteLine($"Drawn to {file}.");
        return ExitCode.Fine;
    }

    private static Func<Artwork, byte[]> FormatOf(string name) => Path.GetExtension(name).ToUpperInvariant() switch
    {
        ".PNG" => PngImage.Of,
        ".SVG" => SvgImage.Of,
        _ => throw new PlainException($"{name} says not what to draw: end its name with .png or .svg."),
    };
}
