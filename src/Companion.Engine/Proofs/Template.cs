using System.Collections.Immutable;
using System.Text;

namespace Companion.Engine.Proofs;

/// <summary>
/// Text with named slots. <c>{cells}</c> takes the list joined by "and", <c>{cells:or}</c> joined by "or", and
/// <c>{cells:goes/go}</c> becomes the first word where the list has one member and the second otherwise.
/// </summary>
internal sealed class Template
{
    private readonly ImmutableArray<Part> _parts;

    private Template(ImmutableArray<Part> parts) => _parts = parts;

    // A literal has no slot; a slot has either a joint or the two words to choose from.
    private readonly record struct Part(string Literal, string? Slot, Joint Joint, string? Singular, string? Plural);

    /// <summary>The names of the slots.</summary>
    internal IEnumerable<string> Slots => _parts.Select(part => part.Slot).OfType<string>().Distinct();

    /// <summary>The text of a template without slots.</summary>
    internal string Text => Fill(ImmutableDictionary<string, Filling>.Empty);

    /// <summary>A template that is this text, whatever stands in it.</summary>
    internal static Template Literal(string text) => new([new(text, null, default, null, null)]);

    /// <summary>Reads a template.</summary>
    /// <exception cref="FormatException">A brace is not matched, or what stands after the colon means nothing.</exception>
    internal static Template Parse(string text)
    {
        var parts = ImmutableArray.CreateBuilder<Part>();
        var at = 0;
        while (at < text.Length)
        {
            var open = text.IndexOf('{', at);
            var literal = text[at..(open < 0 ? text.Length : open)];
            if (literal.Contains('}', StringComparison.Ordinal))
                throw new FormatException($"\"{text}\" has a '}}' without a '{{' before it.");
            if (literal.Length > 0)
                parts.Add(new(literal, null, default, null, null));
            if (open < 0)
                break;
            var close = text.IndexOf('}', open);
            if (close < 0)
                throw new FormatException($"\"{text}\" has a '{{' without a '}}' after it.");
            parts.Add(ParseSlot(text[(open + 1)..close]));
            at = close + 1;
        }

        return new(parts.ToImmutable());
    }

    /// <summary>The text with its slots filled; a slot for which there is nothing stays empty.</summary>
    internal string Fill(IReadOnlyDictionary<string, Filling> fillings)
    {
        var text = new StringBuilder();
        foreach (var part in _parts)
        {
            if (part.Slot is null)
                text.Append(part.Literal);
            else if (fillings.TryGetValue(part.Slot, out var filling))
                text.Append(part.Singular is null ? filling.Text(part.Joint) : filling.Count == 1 ? part.Singular : part.Plural);
        }

        return text.ToString();
    }

    private static Part ParseSlot(string slot)
    {
        var colon = slot.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
            return new("", slot, Joint.And, null, null);
        var name = slot[..colon];
        var form = slot[(colon + 1)..];
        if (form == "or")
            return new("", name, Joint.Or, null, null);
        var words = form.Split('/');
        return words.Length == 2
            ? new("", name, default, words[0], words[1])
            : throw new FormatException($"\"{{{slot}}}\" should end in ':or' or in two words such as ':goes/go'.");
    }
}
