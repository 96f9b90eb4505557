namespace Companion.Server.Chat.Webhook;

/// <summary>Lets a signed request in once, and only while it is fresh.</summary>
/// <param name="secret">The shared secret.</param>
/// <param name="clock">The clock.</param>
internal sealed class SignatureCheck(Secret secret, TimeProvider clock)
{
    /// <summary>How far the sender's clock may be from ours, either way.</summary>
    public static readonly TimeSpan Window = TimeSpan.FromMinutes(5);

    /// <summary>How many requests a second are taken for long.</summary>
    public const int PerSecond = 20;

    /// <summary>How many requests are taken at once.</summary>
    public const int Burst = 100;

    private readonly Pace _pace = new(TimeSpan.FromSeconds(1) / PerSecond, Burst, clock);

    // As many as can come in while any of them could be sent again.
    private readonly SeenIds _seen = new(Burst + (PerSecond * 2 * (int)Window.TotalSeconds));

    /// <summary>Looks at a request.</summary>
    /// <param name="time">The header with the time.</param>
    /// <param name="signature">The header with the signature.</param>
    /// <param name="body">The body.</param>
    /// <returns>Why it is not let in, or null.</returns>
    public Refusal? Look(string time, string signature, ReadOnlySpan<byte> body)
    {
        var expected = Signature.Of(secret, time, body);
        if (Signature.Time(time) is not { } sentAt || !Signature.Fits(signature, expected))
            return new(StatusCodes.Status401Unauthorized, Refusals.BadSignature);
        if ((clock.GetUtcNow() - sentAt).Duration() > Window)
            return new(StatusCodes.Status401Unauthorized, Refusals.Stale);
        // Counted only now, so that nobody without the secret can use up what one with it may send.
        if (!_pace.TryTake())
            return new(StatusCodes.Status429TooManyRequests, Refusals.TooMany);
        return _seen.Add(Convert.ToHexString(expected)) ? null : new(StatusCodes.Status409Conflict, Refusals.Repeated);
    }

    /// <summary>Why a request is not let in.</summary>
    /// <param name="Status">The HTTP status.</param>
    /// <param name="Sentence">The same in one plain sentence.</param>
    internal sealed record Refusal(int Status, string Sentence);
}
