namespace Companion.Server.Live.Loop;

/// <summary>Somebody who is shown the session after each change.</summary>
internal interface IOutput
{
    /// <summary>Takes the newest snapshot. Called on the session's loop: it returns at once and sends later.</summary>
    /// <param name="snapshot">The session now.</param>
    void Show(Snapshot snapshot);
}
