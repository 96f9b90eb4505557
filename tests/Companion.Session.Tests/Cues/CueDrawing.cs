using Companion.Session.State;

namespace Companion.Session.Tests.Cues;

/// <summary>A cue list as lines of text, for expectations: id, stage, what is to be said, version.</summary>
internal static class CueDrawing
{
    public static string Of(CueList cues) => string.Join('\n', cues.CallOuts.Select(Of));

    private static string Of(CallOut callOut)
    {
        var stage = callOut.Stage switch
        {
            CueStage.StandBy => "stand by",
            var other => other.ToString().ToLowerInvariant(),
        };
        return $"{callOut.Id} {stage} {Said(callOut)} v{callOut.Version}";
    }

    private static string Said(CallOut callOut) => callOut switch
    {
        TextCallOut text => $"\"{text.Text}\"",
        DeductionCallOut cue =>
            $"{cue.Deduction.Rule} {string.Join(' ', cue.Deduction.PatternCells)} as far as {cue.Grade.ToString().ToLowerInvariant()}",
        _ => throw new InvalidOperationException($"{callOut} is drawn in no way."),
    };
}
