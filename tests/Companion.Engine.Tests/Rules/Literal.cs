using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>What the literal finders have in common: how a finding is written, and plain lists combined.</summary>
internal static class Literal
{
    /// <summary>
    /// A deduction in the words of the literal finders, in which no order counts. Cells of the one role that tells a cell of the
    /// pattern from the others, such as the pivot, are marked.
    /// </summary>
    public static string Text(Deduction deduction)
    {
        var marked = deduction.Cells.Where(part => IsMarked(part.Role)).Select(part => Of(part.Cell));
        var others = deduction.Cells.Where(part => !IsMarked(part.Role)).Select(part => Of(part.Cell));
        var digits = deduction.Digits.Select(digit => digit.Value);
        var houses = deduction.Houses.Select(house => house.ToString());
        var follows = (deduction.Places.IsEmpty ? deduction.Removes : deduction.Places)
            .Select(candidate => (Of(candidate.Cell), candidate.Digit.Value));
        return Text(marked, others, digits, houses, [.. follows]);

        static Place Of(Cell cell) => (cell.Row, cell.Column);

        static bool IsMarked(Role role) => role is Role.Pivot or Role.Fin or Role.End or Role.Roof;
    }

    public static List<TMember> Union<TPart, TMember>(List<TPart> parts, Func<TPart, List<TMember>> members)
    {
        var union = new List<TMember>();
        foreach (var part in parts)
        {
            foreach (var member in members(part))
            {
                if (!union.Contains(member))
                    union.Add(member);
            }
        }

        return union;
    }

    public static IEnumerable<List<T>> Combinations<T>(List<T> items, int size, int from = 0)
    {
        if (size == 0)
            yield return [];
        for (var first = from; size > 0 && first <= items.Count - size; first++)
        {
            foreach (var rest in Combinations(items, size - 1, first + 1))
                yield return [items[first], .. rest];
        }
    }

    public static void Add(
        HashSet<string> found,
        List<Place> marked,
        List<Place> others,
        IEnumerable<int> digits,
        List<LiteralHouse> houses,
        List<(Place Cell, int Digit)> follows)
    {
        if (follows.Count > 0)
            found.Add(Text(marked, others, digits, houses.Select(house => house.Name), follows));
    }

    private static string Text(
        IEnumerable<Place> marked,
        IEnumerable<Place> others,
        IEnumerable<int> digits,
        IEnumerable<string> houses,
        List<(Place Cell, int Digit)> follows) =>
        $"marked {string.Join(' ', marked.Order())} others {string.Join(' ', others.Order())} "
        + $"digits {string.Concat(digits.Order())} in {string.Join(' ', houses.Order(StringComparer.Ordinal))} "
        + $"so {string.Join(' ', follows.Order())}";
}
