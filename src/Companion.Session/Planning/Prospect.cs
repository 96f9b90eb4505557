using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Session.Planning;

/// <summary>What is to be expected of one featured rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Coming">When it comes.</param>
/// <param name="Forecast">How it comes; null where it was shown or is not looked for.</param>
/// <param name="Since">
/// Number of the entry by which that came to be so, as far as it was looked at; see <see cref="State.Step.Number"/>. 0 or the number
/// of the loading where it has been so from the start.
/// </param>
/// <param name="IsPassed">Whether it is never coming, and was open or ahead once, on a board that the entries which stand came by.</param>
public sealed record Prospect(RuleId Rule, Coming Coming, Forecast? Forecast, int Since, bool IsPassed);
