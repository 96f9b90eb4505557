using Companion.Session.Asks;
using Companion.Session.State;

namespace Companion.Session.Audience;

/// <summary>What every viewer's page is shown: the board as their picture has it, and how far they may ask. Compared by value.</summary>
/// <param name="Sequence">Grows by one with each view that differs from the one before.</param>
/// <param name="Door">Who may open the page now.</param>
/// <param name="DelaySeconds">How old the board is that is shown, 0 to 60.</param>
/// <param name="Asks">How far viewers may go now.</param>
/// <param name="IsQuiet">Whether they are not answered now, as something is on air.</param>
/// <param name="Credit">Title, setter and link of the puzzle; null as long as there is no board.</param>
/// <param name="Board">
/// The board of that time ago; null where nothing was shown then, or no puzzle, and while the door is closed.
/// </param>
public sealed record AudienceView(
    long Sequence, AudienceDoor Door, int DelaySeconds, AskLimits Asks, bool IsQuiet, Credit? Credit, AudienceBoard? Board);
