using System.Text.Json;
using Companion.Engine.Rules;

namespace Companion.Engine.Proofs;

/// <summary>
/// The phrases from which <see cref="Wording"/> makes its sentences, as one file of <c>configs/phrases/</c> holds them: nested
/// objects of texts, some with slots such as <c>{cells}</c>, <c>{cells:or}</c> and <c>{cells:goes/go}</c>.
/// </summary>
public sealed class Phrases
{
    private const string About = "about";

    private readonly Dictionary<string, Template> _templates = [];

    private Phrases()
    {
    }

    private Phrases(Phrases other) => _templates = new(other._templates);

    /// <summary>Reads a phrase file and validates it against the rules of the ladder.</summary>
    /// <param name="json">The text of the file.</param>
    /// <exception cref="FormatException">
    /// The text is no JSON object of texts, a phrase is missing or unknown, or a template is malformed or uses a slot that it
    /// does not have; the message lists every reason.
    /// </exception>
    public static Phrases Parse(string json) => Parse(json, Ladder.Whole.Rules.Select(rule => rule.Id));

    /// <summary>Reads a phrase file and validates it against these rules.</summary>
    /// <param name="json">The text of the file.</param>
    /// <param name="rules">The rules for which it must have phrases; it may have phrases for others.</param>
    /// <exception cref="FormatException">As for <see cref="Parse(string)"/>.</exception>
    public static Phrases Parse(string json, IEnumerable<RuleId> rules)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(rules);
        var faults = new List<string>();
        var phrases = new Phrases();
        foreach (var (name, text) in Flatten(json, faults))
            phrases.Add(name, text, faults);
        var ofRules = rules.SelectMany(rule => PhraseNames.OfRule.Keys.Select(part => Name(rule, part)));
        var wanted = PhraseNames.General.Keys.Concat(ofRules);
        faults.AddRange(wanted.Where(name => !phrases._templates.ContainsKey(name)).Select(name => $"'{name}' is missing."));
        return faults.Count == 0 ? phrases : throw new FormatException($"The phrases cannot be used: {string.Join(' ', faults)}");
    }

    /// <summary>The same phrases with a presenter's own names of rules, as a ladder file may give them.</summary>
    /// <param name="ladder">The ladder; its rungs with <see cref="Rung.Called"/> count.</param>
    public Phrases Calling(Ladder ladder)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        var phrases = new Phrases(this);
        foreach (var rung in ladder.Rungs)
        {
            if (rung.Called is not { } called)
                continue;
            phrases._templates[Name(rung.Rule.Id, "name")] = Template.Literal(called.Bare);
            phrases._templates[Name(rung.Rule.Id, "a-name")] = Template.Literal(called.WithArticle);
        }

        return phrases;
    }

    internal Template this[string name] => _templates[name];

    internal Template this[RuleId rule, string part] => _templates.TryGetValue(Name(rule, part), out var template)
        ? template
        : throw new ArgumentException($"There are no phrases for the rule '{rule}'.", nameof(rule));

    /// <summary>A phrase without slots.</summary>
    internal string Word(string name) => _templates[name].Text;

    private static string Name(RuleId rule, string part) => $"rules.{rule}.{part}";

    private void Add(string name, string text, List<string> faults)
    {
        if (SlotsOf(name) is not { } slots)
        {
            faults.Add($"'{name}' is not the name of a phrase.");
            return;
        }

        try
        {
            var template = Template.Parse(text);
            faults.AddRange(template.Slots.Except(slots).Select(slot => $"'{name}' has no slot '{slot}' to fill."));
            if (!_templates.TryAdd(name, template))
                faults.Add($"'{name}' stands twice.");
        }
        catch (FormatException fault)
        {
            faults.Add($"'{name}': {fault.Message}");
            _templates.TryAdd(name, Template.Parse("")); // Malformed, but not missing.
        }
    }

    private static string[]? SlotsOf(string name)
    {
        if (PhraseNames.General.TryGetValue(name, out var slots))
            return slots;
        return name.Split('.') is ["rules", _, var part] && PhraseNames.OfRule.TryGetValue(part, out slots) ? slots : null;
    }

    private static List<(string Name, string Text)> Flatten(string json, List<string> faults)
    {
        var found = new List<(string, string)>();
        try
        {
            using var document = JsonDocument.Parse(json);
            Walk(document.RootElement, "");
        }
        catch (JsonException fault)
        {
            faults.Add($"The text is not JSON: {fault.Message}");
        }

        return found;

        void Walk(JsonElement element, string name)
        {
            if (name == About)
                return;
            if (element.ValueKind == JsonValueKind.String)
                found.Add((name, element.GetString()!));
            else if (element.ValueKind != JsonValueKind.Object)
                faults.Add($"'{name}' is neither a text nor a group of texts.");
            else
                foreach (var member in element.EnumerateObject())
                    Walk(member.Value, name.Length == 0 ? member.Name : $"{name}.{member.Name}");
        }
    }
}
