using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Events;
using Companion.Session.Events.Storage;

namespace Companion.Session.Tests.Events;

public sealed class EventTextTests
{
    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void Every_event_of_a_session_comes_back_as_it_was(int seed)
    {
        var session = RandomSession.Of(seed, commands: 120);

        var read = session.Log.Select(EventText.Write).Select(EventText.Read).ToList();

        Assert.Equal(session.Log, read);
        Assert.Equal(session.State, PlayedSession.Replay(read));
    }

    [Fact]
    public void A_deduction_comes_back_whole()
    {
        foreach (var deduction in PlayedSession.Of(Puzzles.Demo).Scan().Open.Concat(PlayedSession.Of(Puzzles.Easy).Scan().Open)
            .Select(found => found.Deduction))
        {
            var read = Assert.IsType<DeductionUsed>(
                EventText.Read(EventText.Write(new DeductionUsed(PlayedSession.Start, deduction)))).Deduction;

            Assert.Equal(deduction.Rule, read.Rule);
            Assert.Equal(deduction.Cells, read.Cells);
            Assert.Equal(deduction.Houses, read.Houses);
            Assert.Equal(deduction.Digits, read.Digits);
            Assert.Equal(deduction.Links, read.Links);
            Assert.Equal(deduction.RestsOn, read.RestsOn);
            Assert.Equal(deduction.Places, read.Places);
            Assert.Equal(deduction.Removes, read.Removes);
        }
    }

    [Fact]
    public void Every_role_has_a_name()
    {
        var deduction = new Deduction
        {
            Rule = new("made-up"),
            Cells = [.. Enum.GetValues<Role>().Select((role, index) => new PatternCell(Cell.At(index), role))],
            Digits = DigitSet.Parse("1"),
        };

        var read = EventText.Read(EventText.Write(new StoodBy(PlayedSession.Start, deduction)));

        Assert.Equal(deduction, Assert.IsType<StoodBy>(read).Deduction);
    }

    [Fact]
    public void Groups_and_almost_locked_sets_come_back()
    {
        var group = new Link(Candidate.Parse("r1c1=5"), Candidate.Parse("r4c2=5"), IsStrong: true)
        {
            FromGroup = CellSet.Of(Cell.Parse("r1c1"), Cell.Parse("r1c2")),
            ToGroup = CellSet.Of(Cell.Parse("r4c2"), Cell.Parse("r5c2")),
        };
        var deduction = new Deduction
        {
            Rule = new("made-up"),
            Cells = [new(Cell.Parse("r1c1"), Role.Set)],
            Digits = DigitSet.Parse("5"),
            Links = [group, group with { FromGroup = CellSet.Empty }, group with { ToGroup = CellSet.Empty }],
            Sets = [CellSet.Of(Cell.Parse("r1c1"), Cell.Parse("r1c9")), CellSet.Of(Cell.Parse("r2c2"))],
        };

        var read = ((StoodBy)EventText.Read(EventText.Write(new StoodBy(PlayedSession.Start, deduction)))).Deduction;

        Assert.Equal(deduction.Links, read.Links);
        Assert.Equal(deduction.Sets, read.Sets);
    }

    [Fact]
    public void Every_role_and_the_assumption_of_one_solution_come_back()
    {
        var deduction = new Deduction
        {
            Rule = new("made-up"),
            Cells = [.. Enum.GetValues<Role>().Select(role => new PatternCell(Cell.At((int)role), role))],
            Digits = DigitSet.Parse("5"),
            AssumesOneSolution = true,
        };

        var read = ((StoodBy)EventText.Read(EventText.Write(new StoodBy(PlayedSession.Start, deduction)))).Deduction;

        Assert.Equal(deduction.Cells, read.Cells);
        Assert.True(read.AssumesOneSolution);
    }

    [Fact]
    public void Nets_within_nets_come_back()
    {
        var inner = new Branch(Candidate.Parse("r5c5=6"), [], new(null, House.Parse("b5"), DigitSet.Parse("6")));
        var step = new Deduction
        {
            Rule = new("inner"),
            Cells = [new(Cell.Parse("r5c5"), Role.Start)],
            Digits = DigitSet.Parse("6"),
            Branches = [inner],
        };
        var outer = new Branch(Candidate.Parse("r1c1=5"), [step], new(Cell.Parse("r9c9"), null, DigitSet.Parse("12")));
        var net = new Deduction { Rule = new("made-up"), Cells = [new(Cell.Parse("r1c1"), Role.Start)], Digits = DigitSet.All, Branches = [outer] };

        var read = Assert.Single(((StoodBy)EventText.Read(EventText.Write(new StoodBy(PlayedSession.Start, net)))).Deduction.Branches);

        Assert.Equal((outer.Supposed, outer.End), (read.Supposed, read.End));
        Assert.Equal(step, Assert.Single(read.Steps));
        var within = Assert.Single(read.Steps[0].Branches);
        Assert.Equal((inner.Supposed, inner.End), (within.Supposed, within.End));
    }

    [Fact]
    public void Times_keep_their_offset_and_their_fractions()
    {
        var at = new DateTimeOffset(2026, 1, 1, 20, 0, 0, TimeSpan.FromHours(-3.5)).AddTicks(1234567);

        Assert.Equal(at.Offset, EventText.Read(EventText.Write(new GridCleared(at))).At.Offset);
        Assert.Equal(at, EventText.Read(EventText.Write(new GridCleared(at))).At);
    }

    [Theory]
    [InlineData("no-such-kind", "{}", "No kind of event is called 'no-such-kind': the log was written by a later version.")]
    [InlineData("digit-placed", "{", "This is no event of the kind 'digit-placed'")]
    [InlineData("digit-placed", "null", "it is empty")]
    [InlineData("digit-placed", """{"at":"2026-01-01T20:00:00+00:00","cell":"r1c1"}""", "the field 'digit' is missing")]
    [InlineData("digit-placed", """{"at":"2026-01-01T20:00:00+00:00","cell":"r1c1","digit":0}""", "'digit-placed'")]
    [InlineData("digit-placed", """{"at":"2026-01-01T20:00:00+00:00","cell":7,"digit":1}""", "'digit-placed'")]
    [InlineData("digit-placed", """{"at":"yesterday","cell":"r1c1","digit":1}""", "'digit-placed'")]
    public void What_is_no_event_is_refused_with_the_reason(string kind, string body, string reason) => Assert.Contains(
        reason, Assert.Throws<FormatException>(() => EventText.Read(new(kind, body))).Message, StringComparison.Ordinal);
}
