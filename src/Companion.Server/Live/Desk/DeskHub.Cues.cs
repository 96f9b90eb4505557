using Companion.Engine.Proofs;
using Companion.Server.Wire;
using Companion.Session.Commands;
using Companion.Session.State;

namespace Companion.Server.Live.Desk;

/// <content>What a panel can ask for about the cue list.</content>
internal sealed partial class DeskHub
{
    public Task<Reply> CueDeduction(string? id, int grade) => Ask(now => new CueDeduction(now.Named(id), GradeOf(grade)));

    public Task<Reply> CueText(string? text) => Ask(_ => new CueText(text ?? ""));

    public Task<Reply> RewordCue(int id, int version, string? text) => Ask(_ => new RewordCue(id, version, text ?? ""));

    public Task<Reply> RegradeCue(int id, int version, int grade) => Ask(_ => new RegradeCue(id, version, GradeOf(grade)));

    public Task<Reply> MoveCue(int id, int? after) => Ask(_ => new MoveCue(id, after));

    public Task<Reply> TurnCue(int id, int version, string? stage) => Ask(_ => new TurnCue(id, version, Stage(stage)));

    public Task<Reply> TakeCue(int id, int version) => Ask(_ => new TakeCue(id, version));

    public Task<Reply> RemoveCue(int id, int version) => Ask(_ => new RemoveCue(id, version));

    public Task<Reply> SweepCues() => Ask(_ => new SweepCues());

    private static Grade GradeOf(int value) => Enum.IsDefined((Grade)value)
        ? (Grade)value
        : throw new FormatException($"{value} is not a grade from 1 to 4.");

    // The names by which stages are sent to the pages.
    private static CueStage Stage(string? name) => name switch
    {
        "listed" => CueStage.Listed,
        "standBy" => CueStage.StandBy,
        "go" => CueStage.Go,
        "done" => CueStage.Done,
        _ => throw new FormatException($"'{name}' is no stage of a cue: listed, standBy, go or done."),
    };
}
