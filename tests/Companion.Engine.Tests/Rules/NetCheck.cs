using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>
/// What every test of a net asserts. Of several nets with as few steps a rule gives one, and which depends on the order of cells: on
/// a board that is moved it must have as many steps for the same conclusion.
/// </summary>
internal static class NetCheck
{
    /// <summary>The rule finds that these candidates go, by these nets in this order, on the moved board by as short ones.</summary>
    public static void Finds(IRule rule, Board board, string goes, params string[] nets)
    {
        var found = RuleCheck.Find(rule, board);
        Assert.Equal(nets, found.Select(Text));
        Assert.Equal(Drawing.Candidates(goes), found.Aggregate(CandidateSet.Empty, (all, net) => all | net.Removes));
        Assert.All(found, net => Assert.True(ProofChecker.Check(board, net).Holds));
        foreach (var symmetry in Symmetry.All)
            Assert.Equal(found.Select(net => Short(symmetry.Of(net), net)).Order(), RuleCheck.Find(rule, symmetry.Of(board)).Select(Short).Order());
    }

    /// <summary>What is supposed, the steps and the end, as text.</summary>
    public static string Text(Deduction net) => string.Join("; ", net.Branches.Select(Text));

    private static string Text(Branch branch) =>
        $"if {branch.Supposed} then {string.Join(", ", branch.Steps.Select(StepText).Append($"but {Text(branch.End)}"))}";

    private static string StepText(Deduction step) => string.Join(' ', step.Places) + string.Concat(step.Removes.Select(gone => $"-{gone}"));

    private static string Text(DeadEnd end) => end.Cell is { } cell ? $"{cell} is empty" : $"{end.House} has no {end.Digits}";

    private static string Short(Deduction net) => Short(net, net);

    private static string Short(Deduction moved, Deduction net) =>
        $"{moved.Removes} {string.Join('+', net.Branches.Select(branch => branch.Steps.Length))}";
}
