using System.Text.Json;
using Companion.Server.Wire;

namespace Companion.Server.Chat.Webhook;

/// <summary>
/// Posts what is to be said to the address in the settings, signed like what comes in. What cannot be delivered is lost: an answer
/// that is late answers nothing any more.
/// </summary>
internal sealed partial class AnswerPoster(
    ChatSettings settings, ChatSecrets secrets, TimeProvider clock, ILogger<AnswerPoster> log) : BackgroundService, IChat
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    // More answers than can be of use if the other end hangs.
    private readonly Dropping<WebhookAnswers> _toPost = new(32);

    /// <inheritdoc/>
    public void Say(string text)
    {
        if (ChatText.Sayable(text) is { Length: > 0 } sayable)
            Post(new(null, [sayable]));
    }

    /// <summary>Posts answers when their turn comes. Never waits.</summary>
    /// <param name="answers">The answers; none are not posted.</param>
    public void Post(WebhookAnswers answers)
    {
        if (!answers.Answers.IsEmpty)
            _toPost.Give(answers);
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (settings.Webhook.AnswersUrl.Length == 0 || secrets.SharedSecret is not { } secret)
            return;
        var url = new Uri(settings.Webhook.AnswersUrl);
        // What was signed for one address goes to no other.
        using var web = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { Timeout = Patience };
        await foreach (var answers in _toPost.Reader.ReadAllAsync(stoppingToken))
        {
            try
            {
                using var request = Request(url, secret, answers);
                using var response = await web.SendAsync(request, stoppingToken);
                if (!response.IsSuccessStatusCode)
                    Refused((int)response.StatusCode);
            }
            catch (Exception lost) when (lost is HttpRequestException || (lost is OperationCanceledException && !stoppingToken.IsCancellationRequested))
            {
                Lost(lost.GetType().Name);
            }
        }
    }

    private HttpRequestMessage Request(Uri url, Secret secret, WebhookAnswers answers)
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(answers, WireJson.Options);
        var time = Signature.Text(clock.GetUtcNow());
        var request = new HttpRequestMessage(HttpMethod.Post, url) { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = new("application/json");
        request.Headers.Add(Signature.TimeHeader, time);
        request.Headers.Add(Signature.Header, Convert.ToHexStringLower(Signature.Of(secret, time, body)));
        return request;
    }

    [LoggerMessage(LogLevel.Warning, "chat.webhook.answersUrl refused answers with status {Status}.")]
    private partial void Refused(int status);

    [LoggerMessage(LogLevel.Warning, "chat.webhook.answersUrl could not be reached ({Fault}); answers were lost.")]
    private partial void Lost(string fault);
}
