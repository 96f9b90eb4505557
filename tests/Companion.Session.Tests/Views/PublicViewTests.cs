using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Tests.Views;

public sealed class PublicViewTests
{
    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void The_stage_shows_what_the_presenter_wrote()
    {
        _session.Place("r2c2", 6).Block("r1c1", 4).Strike("r1c2", 5).List("r1c4", "47");

        var stage = PublicViews.Stage(_session.State, ShippedVoice.Voice);

        Assert.Equal(new StageCell(Digit.Of(3), true, null, default, default), stage.Cells[2]);
        Assert.Equal(new StageCell(Digit.Of(6), false, null, default, default), stage.Cells[10]);
        Assert.Equal(new StageCell(null, false, null, DigitSet.Parse("4"), default), stage.Cells[0]);
        Assert.Equal(new StageCell(null, false, null, default, DigitSet.Parse("5")), stage.Cells[1]);
        Assert.Equal(new StageCell(null, false, DigitSet.Parse("47"), default, default), stage.Cells[3]);
    }

    [Fact]
    public void Overlay_and_stage_have_the_hint_type_of_the_grade_on_air()
    {
        _session.Do(new StandBy(_session.Scan().Open[0].Deduction));
        Assert.Null(PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).OnAir);

        foreach (var type in new[] { typeof(WhereHint), typeof(WhatHint), typeof(WhichHint), typeof(WhyHint) })
        {
            _session.Do(new NextGrade());
            Assert.IsType(type, PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).OnAir);
            Assert.IsType(type, PublicViews.Stage(_session.State, ShippedVoice.Voice).OnAir);
        }
    }

    [Fact]
    public void The_overlay_of_a_scene_has_its_frame_and_shows_it_while_it_is_being_placed()
    {
        var frame = new Frame(0, 0, 0.5, 0.5);
        _session.Do(new PlaceFrame("close", frame), new ShowFrame("close"));

        Assert.Equal(new(3, frame, true, null, null), PublicViews.Overlay(_session.State, "close", ShippedVoice.Voice));
        Assert.False(PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).ShowsFrame);
    }

    [Fact]
    public void The_code_that_measures_the_delay_is_on_the_overlay_and_on_the_stage()
    {
        _session.Do(new ShowDelayCode("kite"));

        Assert.Equal("kite", PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice).Code);
        Assert.Equal("kite", PublicViews.Stage(_session.State, ShippedVoice.Voice).Code);
    }

    [Fact]
    public void The_overlay_of_a_scene_that_is_not_there_is_that_of_the_main_scene() => Assert.Equal(
        PublicViews.Overlay(_session.State, Scenes.Main, ShippedVoice.Voice),
        PublicViews.Overlay(_session.State, "far", ShippedVoice.Voice));
}
