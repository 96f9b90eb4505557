using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Air;

/// <summary>Decides on scenes and the board's place in them.</summary>
internal static class SceneRequests
{
    private const int LongestName = 40;

    // A smaller board cannot be read in any picture that is broadcast.
    private const double Smallest = 0.05;

    public static Decision Place(SessionState state, PlaceFrame place, DateTimeOffset now)
    {
        if (!IsName(place.Scene))
            return Decision.Refuse($"A scene's name has 1 to {LongestName} letters, digits, blanks or hyphens: choose another.");
        if (!Fits(place.Frame))
        {
            return Decision.Refuse(
                "The board lies inside the picture and takes at least 5 % of its width and height: move or enlarge it.");
        }

        return state.Scenes[place.Scene] == place.Frame
            ? Decision.Nothing
            : Decision.Of(new FramePlaced(now, place.Scene, place.Frame));
    }

    public static Decision Forget(SessionState state, ForgetScene forget, DateTimeOffset now)
    {
        if (forget.Scene == Scenes.Main)
            return Decision.Refuse($"The scene '{Scenes.Main}' is always there: place its frame instead.");
        return state.Scenes[forget.Scene] is null
            ? NoSuchScene(forget.Scene)
            : Decision.Of(new SceneForgotten(now, forget.Scene));
    }

    public static Decision Show(SessionState state, ShowFrame show, DateTimeOffset now)
    {
        if (show.Scene is not null && state.Scenes[show.Scene] is null)
            return NoSuchScene(show.Scene);
        return state.ShownFrame == show.Scene ? Decision.Nothing : Decision.Of(new FrameShown(now, show.Scene));
    }

    private static Decision NoSuchScene(string scene) =>
        Decision.Refuse($"There is no scene '{scene}': choose one of the list.");

    private static bool IsName(string name) =>
        name.Length is > 0 and <= LongestName && name == name.Trim()
        && name.All(character => char.IsLetterOrDigit(character) || character is ' ' or '-');

    // Written so that a frame that is not a number does not fit.
    private static bool Fits(Frame frame) =>
        frame is { Left: >= 0, Top: >= 0, Width: >= Smallest, Height: >= Smallest }
        && frame.Left + frame.Width <= 1 && frame.Top + frame.Height <= 1;
}
