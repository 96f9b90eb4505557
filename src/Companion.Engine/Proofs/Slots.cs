namespace Companion.Engine.Proofs;

/// <summary>Fills the slots of a rule's phrases.</summary>
internal static class Slots
{
    /// <summary>What a pattern fills: all that a grade 3 hint may say.</summary>
    internal static Dictionary<string, Filling> Of(Pattern pattern, Names names) => new()
    {
        ["digits"] = names.Digits(pattern.Digits),
        ["cells"] = names.Cells([.. pattern.Cells.Select(cell => cell.Cell)]),
        ["places"] = names.CellsWithin(pattern.Houses, [.. pattern.Cells.Select(cell => cell.Cell)]),
        ["houses"] = names.Houses(pattern.Houses),
        ["house-kind"] = names.Noun(pattern.Houses, one: true),
        ["house-kinds"] = names.Noun(pattern.Houses, one: false),
        ["cover"] = names.Houses(pattern.Cover),
        ["cover-kind"] = names.Noun(pattern.Cover, one: true),
        ["cover-kinds"] = names.Noun(pattern.Cover, one: false),
        ["pivot"] = names.Cells(pattern.In(Role.Pivot)),
        ["pincers"] = names.Cells(pattern.In(Role.Pincer)),
        ["fins"] = names.Cells(pattern.In(Role.Fin)),
        ["ends"] = names.Cells(pattern.In(Role.End)),
        ["between"] = names.Cells(pattern.In(Role.Between)),
        ["start"] = names.Cells(pattern.In(Role.Start)),
        ["through"] = names.Cells([.. pattern.In(Role.Chain), .. pattern.In(Role.ChainEnd)]),
        ["first-colour"] = names.Cells(pattern.In(Role.FirstColour)),
        ["second-colour"] = names.Cells(pattern.In(Role.SecondColour)),
        ["floor"] = names.Cells(pattern.In(Role.Floor)),
        ["roof"] = names.Cells(pattern.In(Role.Roof)),
        ["subset"] = names.Cells(pattern.In(Role.Subset)),
        ["lines"] = names.Houses(pattern.Houses & HouseSet.Lines),
        ["blocks"] = names.Houses(pattern.Houses & HouseSet.Blocks),
        ["sets"] = names.Sets(pattern.Sets),
        ["way"] = names.Way(pattern.Stops),
    };

    /// <summary>
    /// What a whole deduction fills: its pattern, which of its digits go, what follows from what along its links, and for a wing
    /// what each digit of it does.
    /// </summary>
    internal static Dictionary<string, Filling> Of(Deduction deduction, Names names)
    {
        var pattern = Pattern.Of(deduction);
        var slots = Of(pattern, names);
        slots["placed-digits"] = names.Digits(deduction.Places.Digits);
        slots["removed-digits"] = names.Digits(deduction.Removes.Digits & deduction.Digits);
        slots["kept-digits"] = names.Digits(deduction.Digits - deduction.Removes.Digits);
        slots["chain"] = names.Chain(deduction.Links[deduction.NotBoth.Length..]);
        slots["not-both"] = names.Chain(deduction.NotBoth);
        slots["loop"] = new(deduction.IsLoop ? 1 : 2, _ => "");
        slots["with-sets"] = new(pattern.Sets.IsEmpty ? 2 : 1, _ => "");
        slots["with-fish"] = new(deduction.Links.Any(link => link.IsThroughFish) ? 1 : 2, _ => "");
        slots["net"] = names.Net(deduction.Branches);
        if (pattern.In(Role.Floor) is [var floor, ..])
            slots["floor-digits"] = names.Digits(deduction.Digits - deduction.RestsOn[floor]);
        if (pattern.In(Role.Pincer) is not [var first, var second])
            return slots;
        var firstDigits = deduction.Digits - deduction.RestsOn[first];
        var secondDigits = deduction.Digits - deduction.RestsOn[second];
        slots["first-pincer"] = names.Cells([first]);
        slots["second-pincer"] = names.Cells([second]);
        slots["first-digit"] = names.Digits(firstDigits - secondDigits);
        slots["second-digit"] = names.Digits(secondDigits - firstDigits);
        slots["shared-digit"] = names.Digits(firstDigits & secondDigits);
        return slots;
    }
}
