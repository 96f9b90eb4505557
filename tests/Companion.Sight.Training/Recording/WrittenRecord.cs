using System.Globalization;
using System.Text;
using Companion.Sight.Samples;

namespace Companion.Sight.Training.Recording;

/// <summary>A text about a network that grows part by part.</summary>
/// <typeparam name="T">What kind it is.</typeparam>
internal abstract class WrittenRecord<T>
    where T : WrittenRecord<T>
{
    private readonly StringBuilder _text = new();

    /// <summary>The text so far.</summary>
    public override string ToString() => _text.ToString().TrimEnd() + "\n";

    /// <summary>Which families there are.</summary>
    public T Add(string title, IReadOnlyList<FontFamily> families) => Add($"""
        {title}: {families.Count} families with {families.Sum(family => family.Faces.Count)} faces, {string.Join(", ", families.Select(family => family.Name))}.

        """);

    /// <summary>Some text.</summary>
    protected T Add(FormattableString text)
    {
        _text.Append(text.ToString(CultureInfo.InvariantCulture).ReplaceLineEndings("\n")).Append('\n');
        return (T)this;
    }

    /// <summary>A part of all, in per cent.</summary>
    protected static string Part(int count, int all) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / Math.Max(1, all):0.000} %");
}
