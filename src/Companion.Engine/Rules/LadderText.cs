using System.Collections.Immutable;
using System.Text.Json;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>Reads <c>ladder.json</c>: which families are on, and the rungs from the easiest up. Gathers every fault.</summary>
/// <param name="rules">The rules there are. Each must stand in the file once.</param>
internal sealed class LadderText(IEnumerable<IRule> rules)
{
    // The file is written by hand: a comma too many and a remark beside a line are no faults, but a name written twice is.
    private static readonly JsonDocumentOptions ByHand = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        AllowDuplicateProperties = false,
    };

    private readonly Dictionary<string, IRule> _rules = rules.ToDictionary(rule => rule.Id.Value);
    private readonly List<string> _faults = [];
    private readonly List<Family> _families = [];
    private readonly List<Rung> _rungs = [];

    /// <summary>The families and the rungs, in the order of the file.</summary>
    /// <exception cref="FormatException">The file cannot be used; the message lists every reason.</exception>
    internal (ImmutableArray<Family> Families, ImmutableArray<Rung> Rungs) Read(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json, ByHand);
            ReadWhole(document.RootElement);
        }
        catch (JsonException fault)
        {
            _faults.Add($"The text is not JSON: {fault.Message}");
        }

        return _faults.Count == 0
            ? ([.. _families], [.. _rungs])
            : throw new FormatException($"The ladder cannot be used: {string.Join(' ', _faults)}");
    }

    private void ReadWhole(JsonElement file)
    {
        if (Members(file, "The file", ["about", "families", "rungs"]) is not { } members)
            return;
        if (members.TryGetValue("families", out var families) && families.ValueKind == JsonValueKind.Object)
            ReadFamilies(families);
        else
            _faults.Add("'families' says of each family whether it is on, as in { \"wings\": true }.");
        if (members.TryGetValue("rungs", out var rungs) && rungs.ValueKind == JsonValueKind.Array)
            ReadRungs(rungs);
        else
            _faults.Add("'rungs' is the list of the rules, easiest first.");
    }

    private void ReadFamilies(JsonElement families)
    {
        foreach (var family in families.EnumerateObject())
        {
            var isOn = family.Value.ValueKind == JsonValueKind.True;
            _families.Add(new(family.Name, isOn));
            if (!isOn && family.Value.ValueKind != JsonValueKind.False)
                _faults.Add($"The family '{family.Name}' is either true (on) or false (off).");
        }
    }

    private void ReadRungs(JsonElement rungs)
    {
        var seen = new HashSet<string>();
        foreach (var rung in rungs.EnumerateArray())
        {
            if (Members(rung, $"Rung {seen.Count + 1}", ["rule", "family", "cost", "name", "a-name"]) is not { } members)
                continue;
            var name = Text(members, "rule") ?? "";
            if (!_rules.TryGetValue(name, out var rule))
                _faults.Add($"'{name}' is not the name of a rule.");
            else if (seen.Add(name))
                _rungs.Add(new(rule, _rungs.Count, Cost(members, name), FamilyOf(members, name)) { Called = Called(members, name) });
            else
                _faults.Add($"'{name}' stands twice.");
        }

        _faults.AddRange(_rules.Keys.Where(name => !seen.Contains(name)).Select(name => $"'{name}' is missing."));
    }

    private int Cost(Dictionary<string, JsonElement> members, string rule)
    {
        if (members.TryGetValue("cost", out var number) && number.ValueKind == JsonValueKind.Number
            && number.TryGetInt32(out var cost) && cost is >= 1 and <= Rung.Dearest)
        {
            return cost;
        }

        _faults.Add($"The cost of '{rule}' must be a whole number from 1 to {Rung.Dearest}.");
        return 1;
    }

    private string FamilyOf(Dictionary<string, JsonElement> members, string rule)
    {
        var name = Text(members, "family") ?? "";
        if (_families.Count > 0 && !_families.Exists(family => family.Name == name))
            _faults.Add($"'{rule}' is in the family '{name}', which 'families' does not have.");
        return name;
    }

    private RuleName? Called(Dictionary<string, JsonElement> members, string rule)
    {
        var name = (Bare: Text(members, "name"), WithArticle: Text(members, "a-name"));
        if (name is ({ Length: > 0 } bare, { Length: > 0 } withArticle))
            return new(bare, withArticle);
        if (members.ContainsKey("name") || members.ContainsKey("a-name"))
            _faults.Add($"'{rule}' needs both 'name' and 'a-name', or neither.");
        return null;
    }

    private Dictionary<string, JsonElement>? Members(JsonElement element, string what, string[] known)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            _faults.Add($"{what} is no group in braces.");
            return null;
        }

        var members = element.EnumerateObject().ToDictionary(member => member.Name, member => member.Value);
        _faults.AddRange(members.Keys.Except(known).Select(name => $"{what} has '{name}', which means nothing there."));
        return members;
    }

    private static string? Text(Dictionary<string, JsonElement> members, string name) =>
        members.TryGetValue(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;
}
