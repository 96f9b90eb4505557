using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>One call-out of the cue list.</summary>
/// <param name="Id">By which commands name it.</param>
/// <param name="Version">The version shown, which a change names.</param>
/// <param name="Stage">How far it has come.</param>
/// <param name="Text">What is to be said: the talking point, or the deduction as far as its grade goes.</param>
/// <param name="Seconds">How long that takes to say, in seconds.</param>
/// <param name="Deduction">The deduction, or null for a talking point.</param>
public sealed record CallOutView(int Id, int Version, CueStage Stage, string Text, double Seconds, CuedDeduction? Deduction);
