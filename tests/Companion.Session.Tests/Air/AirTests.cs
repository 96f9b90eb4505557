using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Events;

namespace Companion.Session.Tests.Air;

public sealed class AirTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);
    private readonly Deduction _first;
    private readonly Deduction _second;

    public AirTests()
    {
        var open = _session.Scan().Open;
        (_first, _second) = (open[0].Deduction, open[1].Deduction);
    }

    [Fact]
    public void What_stands_by_is_not_on_air()
    {
        _session.Do(new StandBy(_first));

        Assert.Equal(_first, _session.State.Standby?.Deduction);
        Assert.Null(_session.State.OnAir);
    }

    [Fact]
    public void Standing_by_twice_and_down_twice_is_once()
    {
        _session.Do(new StandBy(_first), new StandBy(_first), new StandDown(), new StandDown());

        Assert.Equal(
            [typeof(PuzzleLoaded), typeof(StoodBy), typeof(StoodDown)], _session.Log.Select(happened => happened.GetType()));
    }

    [Fact]
    public void It_goes_on_air_grade_by_grade_and_no_further_than_four()
    {
        _session.Do(new StandBy(_first));
        foreach (var grade in new[] { Grade.Where, Grade.What, Grade.Which, Grade.Why })
        {
            _session.Do(new NextGrade());
            Assert.Equal((_first, grade), (_session.State.OnAir!.Deduction, _session.State.OnAir.Grade));
        }

        Assert.Equal("All of it is on air: clear it, or let another deduction stand by.", _session.Refused(new NextGrade()));
    }

    [Fact]
    public void It_goes_back_grade_by_grade_and_off_air()
    {
        _session.Do(new StandBy(_first), new NextGrade(), new NextGrade(), new PreviousGrade());
        Assert.Equal(Grade.Where, _session.State.OnAir?.Grade);

        _session.Do(new PreviousGrade());
        Assert.Null(_session.State.OnAir);
        Assert.Equal("Nothing is on air: there is no grade to go back to.", _session.Refused(new PreviousGrade()));
    }

    [Fact]
    public void Another_that_stands_by_goes_on_air_from_grade_one()
    {
        _session.Do(new StandBy(_first), new NextGrade(), new NextGrade(), new StandBy(_second));
        Assert.Equal(_first, _session.State.OnAir?.Deduction);

        _session.Do(new NextGrade());
        Assert.Equal((_second, Grade.Where), (_session.State.OnAir!.Deduction, _session.State.OnAir.Grade));
    }

    [Fact]
    public void After_standing_down_what_is_on_air_still_goes_further()
    {
        _session.Do(new StandBy(_first), new NextGrade(), new StandDown(), new NextGrade());

        Assert.Equal((_first, Grade.What), (_session.State.OnAir!.Deduction, _session.State.OnAir.Grade));
    }

    [Fact]
    public void With_nothing_standing_by_and_nothing_on_air_there_is_no_next_grade() =>
        Assert.Equal("Nothing stands by: choose a deduction first.", _session.Refused(new NextGrade()));

    [Fact]
    public void Clearing_is_never_refused()
    {
        Assert.Null(_session.Try(new ClearAir()).Refusal);
        _session.Do(new StandBy(_first), new NextGrade(), new ClearAir());

        Assert.Null(_session.State.OnAir);
        Assert.Equal(_first, _session.State.Standby?.Deduction);
    }

    [Fact]
    public void Undo_does_not_touch_what_is_on_air()
    {
        _session.Place("r1c1", 4).Do(new StandBy(_first), new NextGrade()).Undo();

        Assert.Equal(_first, _session.State.OnAir?.Deduction);
        Assert.Equal(_first, _session.State.Standby?.Deduction);
    }

    [Fact]
    public void Undoing_a_new_puzzle_takes_its_deductions_off_air()
    {
        _session.Do(new LoadPuzzle(Puzzles.Hard, "", "", ""));
        _session.Do(new StandBy(_session.Scan().Open[0].Deduction), new NextGrade()).Undo();

        Assert.Null(_session.State.OnAir);
        Assert.Null(_session.State.Standby);
    }

    [Fact]
    public void What_is_shown_in_full_counts_as_used_and_less_does_not()
    {
        _session.Do(new StandBy(_first), new NextGrade(), new NextGrade(), new NextGrade());
        Assert.Empty(_session.State.Used);

        _session.Do(new NextGrade());
        Assert.Equal(_first, Assert.Single(_session.State.Used).Deduction);
    }

    [Fact]
    public void What_is_said_counts_as_used_once()
    {
        _session.Do(new MarkUsed(_first));

        Assert.Equal(_first, Assert.Single(_session.State.Used).Deduction);
        Assert.Equal("This deduction counts as known already.", _session.Refused(new MarkUsed(_first)));
    }

    [Fact]
    public void Co_hosts_may_put_things_on_air_only_once_they_are_allowed_to()
    {
        Assert.False(_session.State.CoHostMayAir);
        Assert.True(_session.Do(new AllowCoHostOnAir(true)).State.CoHostMayAir);
        Assert.Empty(_session.Try(new AllowCoHostOnAir(true)).Events);
        Assert.False(_session.Do(new AllowCoHostOnAir(false)).State.CoHostMayAir);
    }
}
