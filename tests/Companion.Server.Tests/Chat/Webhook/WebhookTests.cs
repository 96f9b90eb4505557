using System.Net;
using Companion.Server.Chat;
using Companion.Server.Chat.Webhook;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Chat.Webhook;

/// <summary>The way in over HTTP, in the whole server.</summary>
public sealed class WebhookTests(WebhookFixture fixture) : IClassFixture<WebhookFixture>
{
    [Fact]
    public async Task A_signed_message_is_answered()
    {
        using var answer = await fixture.Post("""{ "id": "signed", "userId": "42", "name": "A\u202Ena", "text": "hint \u0002please" }""");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("""{"inReplyTo":"signed","answers":["Ana: hint please"]}""", await answer.Content.ReadAsStringAsync(Stop));
    }

    [Theory]
    [InlineData("""{ "userId": "42", "text": "hint" }""", """{"inReplyTo":null,"answers":["42: hint"]}""")]
    [InlineData("""{ "userId": "42", "text": "hint", "bot": true }""", """{"inReplyTo":null,"answers":[]}""")]
    [InlineData("""{ "userId": "42", "text": "" }""", """{"inReplyTo":null,"answers":[]}""")]
    [InlineData("""{ "userId": "42", "text": "hint", "more": [1] }""", """{"inReplyTo":null,"answers":["42: hint"]}""")]
    public async Task What_may_be_left_out_or_not_heard(string message, string answered)
    {
        using var answer = await fixture.Post(message);

        Assert.Equal(answered, await answer.Content.ReadAsStringAsync(Stop));
    }

    [Fact]
    public async Task A_message_that_comes_twice_is_heard_once()
    {
        using var first = await fixture.Post("""{ "id": "m2", "userId": "42", "text": "hint" }""");
        using var second = await fixture.Post("""{ "id": "m2", "userId": "42", "text": "hint" }""");

        Assert.Equal("""{"inReplyTo":"m2","answers":[]}""", await second.Content.ReadAsStringAsync(Stop));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("hint")]
    [InlineData("{}")]
    [InlineData("""{ "userId": "", "text": "hint" }""")]
    [InlineData("""{ "userId": 42, "text": "hint" }""")]
    [InlineData("""{ "userId": "42" }""")]
    public async Task What_is_no_message_is_refused(string body)
    {
        using var answer = await fixture.Post(body);

        await IsPlain(HttpStatusCode.BadRequest, Refusals.NotAMessage, answer);
    }

    [Fact]
    public async Task What_is_too_long_is_refused()
    {
        using var text = await fixture.Post($$"""{ "userId": "42", "text": "{{new string('x', 501)}}" }""");
        using var body = await fixture.Post($$"""{ "userId": "42", "text": "{{new string('x', 5000)}}" }""");

        await IsPlain(HttpStatusCode.BadRequest, Refusals.NotAMessage, text);
        await IsPlain(HttpStatusCode.RequestEntityTooLarge, Refusals.TooLong, body);
    }

    [Theory]
    [InlineData("http://evil.example", null, HttpStatusCode.Forbidden)]
    [InlineData("null", null, HttpStatusCode.Forbidden)]
    [InlineData("", null, HttpStatusCode.Forbidden)]
    [InlineData(null, "evil.example", HttpStatusCode.BadRequest)]
    public async Task No_page_of_another_site_gets_in_however_well_it_signs(string? origin, string? host, HttpStatusCode status)
    {
        using var answer = await fixture.Post("""{ "userId": "42", "text": "hint" }""", request =>
        {
            request.Headers.Host = host;
            if (origin is not null)
                request.Headers.TryAddWithoutValidation("Origin", origin);
        });

        Assert.Equal(status, answer.StatusCode);
    }

    [Fact]
    public async Task Without_a_good_signature_nothing_gets_in()
    {
        using var answer = await fixture.Post(
            """{ "userId": "42", "text": "hint" }""", request => request.Headers.Remove(Signature.Header));

        await IsPlain(HttpStatusCode.Unauthorized, Refusals.BadSignature, answer);
    }

    [Fact]
    public async Task Without_a_shared_secret_it_is_closed()
    {
        await using var companion = await RunningCompanion.Start();
        using var answer = await fixture.Post("""{ "userId": "42", "text": "hint" }""", address: companion.Address);

        await IsPlain(HttpStatusCode.NotFound, Refusals.Closed, answer);
    }

    [Fact]
    public async Task Answers_and_what_nobody_asked_for_are_posted_to_an_address_of_ones_own()
    {
        await using var inbox = new Inbox(SigningProgram.Key);
        using var folder = new TemporaryFolder();
        await using var companion = await WebhookFixture.Start(
            folder.Path, new() { Port = 0, Chat = new() { Webhook = new() { AnswersUrl = $"{inbox.Address}in" } } }, WebhookFixture.EchoOnly);
        using var answer = await fixture.Post("""{ "id": "m1", "userId": "42", "text": "hint" }""", address: companion.Address);

        Assert.Equal("""{"inReplyTo":"m1","answers":["42: hint"]}""", await inbox.Next());
        inbox.Status = 500;
        foreach (var chat in companion.Services.GetServices<IChat>())
            chat.Say("/lost");
        Assert.Equal("""{"inReplyTo":null,"answers":["lost"]}""", await inbox.Next());
        inbox.Status = 204;
        foreach (var chat in companion.Services.GetServices<IChat>())
            chat.Say("Found it!");
        Assert.Equal("""{"inReplyTo":null,"answers":["Found it!"]}""", await inbox.Next());
    }

    [Fact]
    public async Task The_example_in_the_settings_readme_works_as_it_stands()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/curl") && File.Exists("/usr/bin/openssl"), "curl and openssl are not here.");
        var readme = await File.ReadAllTextAsync(Repository.In("configs", "README.md"), Stop);
        var from = readme.IndexOf("```sh\nbody=", StringComparison.Ordinal) + "```sh\n".Length;
        var script = readme[from..readme.IndexOf("```", from, StringComparison.Ordinal)];

        Assert.Contains("http://localhost:5170/", script, StringComparison.Ordinal);
        var output = await Shell.Run(
            script.Replace("http://localhost:5170/", $"{fixture.Companion.Address}", StringComparison.Ordinal), ("COMPANION_CHAT_SECRET", SigningProgram.Key));
        Assert.Equal("""{"inReplyTo":"m1","answers":["Ana: !hint"]}""", output);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static async Task IsPlain(HttpStatusCode status, string sentence, HttpResponseMessage answer)
    {
        Assert.Equal(sentence, await answer.Content.ReadAsStringAsync(Stop));
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("text/plain", answer.Content.Headers.ContentType?.MediaType);
    }
}
