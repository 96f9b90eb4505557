using Companion.Server.Chat.Webhook;

namespace Companion.Server.Tests.Chat.Webhook;

public sealed class WebhookSettingsTests
{
    [Theory]
    [InlineData("", true)]
    [InlineData("https://chat.example/in", true)]
    [InlineData("http://localhost:9000/in", true)]
    [InlineData("http://127.0.0.1:9000/in", true)]
    [InlineData("http://chat.example/in", false)]
    [InlineData("file:///etc/passwd", false)]
    [InlineData("chat.example", false)]
    public void Answers_leave_this_machine_by_TLS_alone(string url, bool isFine) =>
        Assert.Equal(isFine, !new WebhookSettings { AnswersUrl = url }.Faults().Any());
}
