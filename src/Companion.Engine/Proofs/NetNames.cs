namespace Companion.Engine.Proofs;

/// <summary>
/// Says what follows from what is supposed, step by step, to what cannot be: <c>suppose row one column two were five. Then row one
/// column six can only be seven. Then ... But nothing is left for row nine column one</c>.
/// </summary>
internal sealed class NetNames(Phrases phrases, Names names)
{
    internal string All(IReadOnlyList<Branch> branches) =>
        string.Join(phrases.Word("chains.next"), branches.Select(Whole));

    private string Whole(Branch branch) => string.Concat(
        [
            Fill("nets.suppose", Of(branch.Supposed)),
            .. branch.Steps.Select(step => Fill("nets.then", ("step", Filling.One(Step(step))))),
            Fill("nets.but", ("end", Filling.One(End(branch.End)))),
        ]);

    private string Step(Deduction step)
    {
        if (step.Branches is [var branch])
            return InTurn(branch);
        var (digits, houses) = (("digits", names.Digits(step.Digits)), ("houses", names.Houses(step.Houses)));
        var cells = step.PatternCells;
        if (step.Cells[0].Role != Role.Single)
            return Rule(step);
        return step.Houses.IsEmpty
            ? Fill("nets.naked", digits, ("cells", names.Cells([.. cells])))
            : Fill("nets.hidden", digits, houses, ("places", names.CellsWithin(step.Houses, [.. cells])));
    }

    private string Rule(Deduction step) => Fill(
        "nets.rule",
        ("rule", Filling.One(phrases[step.Rule, "a-name"].Text)),
        ("cells", names.Cells([.. step.PatternCells])),
        ("conclusion", Filling.One(names.Conclusion(step))));

    // What is supposed within what is supposed already, in a breath.
    private string InTurn(Branch branch)
    {
        var steps = branch.Steps.Select(Step).Append(End(branch.End));
        return Fill("nets.in-turn", [.. Of(branch.Supposed), ("steps", Filling.One(string.Join(phrases.Word("chains.so"), steps)))]);
    }

    private string End(DeadEnd end) => end.Cell is { } cell
        ? Fill("nets.no-digit", ("cells", names.Cells([cell])))
        : Fill("nets.no-place", ("digits", names.Digits(end.Digits)), ("houses", names.Houses(HouseSet.Of(end.House!.Value))));

    private (string, Filling)[] Of(Candidate candidate) =>
        [("digits", names.Digits(DigitSet.Of(candidate.Digit))), ("cells", names.Cells([candidate.Cell]))];

    private string Fill(string phrase, params (string Slot, Filling Filling)[] slots) =>
        phrases[phrase].Fill(slots.ToDictionary(slot => slot.Slot, slot => slot.Filling));
}
