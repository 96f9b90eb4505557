using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// How likely each digit is that a sign may be, beside the likeliest one: what it was read as as far as that is sure, and for the rest what
/// its look alone tells, and others of the board.
/// </summary>
internal static class Belief
{
    // How likely what it is most like is, beside what its look alone tells, where it was not read as that.
    private const float ForLikest = 0.5f;

    // Much less likely ones are none that a sign may be.
    private const float Least = 0.01f;

    /// <summary>What a sign may be.</summary>
    /// <param name="sign">A sign that was read as a digit.</param>
    /// <returns>For each digit, by its index, from 0 to 1: 1 for the likeliest one, 0 for those that it cannot be.</returns>
    public static float[] In(Sign sign)
    {
        var (read, certainty) = (sign.Reading.Digit!.Value.Index, sign.Reading.Certainty);
        var belief = new float[Digit.Count];
        // What is sure stays what it is, and so does what the presenter taught.
        if (sign.IsSure || sign.Alone.Reading.Odds is not { IsDefault: false } odds)
        {
            belief[read] = 1;
            return belief;
        }

        for (var digit = 0; digit < belief.Length; digit++)
            belief[digit] = (1 - certainty) * odds[digit] + (digit == read ? certainty : 0);
        if (sign.Likest.Digit is { } likest && likest.Index != read)
            belief[likest.Index] += (1 - certainty) * ForLikest;
        var most = belief.Max();
        return Array.ConvertAll(belief, part => part < Least * most ? 0 : part / most);
    }
}
