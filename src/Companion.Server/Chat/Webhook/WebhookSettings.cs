namespace Companion.Server.Chat.Webhook;

/// <summary>The way in over HTTP. It is open where there is a shared secret: see <see cref="ChatSecrets"/>.</summary>
internal sealed record WebhookSettings
{
    /// <summary>Where all that is to be said is posted as well, over TLS unless on this machine; empty, as by default, for nowhere.</summary>
    public string AnswersUrl { get; init; } = "";

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (AnswersUrl.Length > 0 && !(Uri.TryCreate(AnswersUrl, UriKind.Absolute, out var url) && IsSafe(url)))
            yield return "chat.webhook.answersUrl begins with https://, or with http:// on this machine: change it.";
    }

    private static bool IsSafe(Uri url) => url.Scheme == Uri.UriSchemeHttps || (url.Scheme == Uri.UriSchemeHttp && url.IsLoopback);
}
