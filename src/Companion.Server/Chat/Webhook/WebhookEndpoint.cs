using Companion.Server.Access;
using Companion.Server.Wire;
using Microsoft.AspNetCore.Mvc;

namespace Companion.Server.Chat.Webhook;

/// <summary>The way in for chats that have no IRC: a program of theirs posts each message and is answered with what to say.</summary>
/// <param name="secrets">The shared secret, without which it is closed.</param>
/// <param name="intake">Who hears it.</param>
/// <param name="poster">Where answers go as well.</param>
/// <param name="clock">The clock.</param>
internal sealed class WebhookEndpoint(ChatSecrets secrets, ChatIntake intake, AnswerPoster poster, TimeProvider clock)
{
    private const int Longest = 4096;

    private readonly SignatureCheck? _check = secrets.SharedSecret is { } secret ? new(secret, clock) : null;

    /// <summary>Maps <c>POST /chat/messages</c>.</summary>
    /// <param name="routes">Where to map it.</param>
    public static void Map(IEndpointRouteBuilder routes) => routes
        .MapPost(ToolPaths.ChatMessages, context => context.RequestServices.GetRequiredService<WebhookEndpoint>().Take(context))
        .WithMetadata(new RequestSizeLimitAttribute(Longest));

    private async Task Take(HttpContext context)
    {
        if (_check is null)
        {
            await PlainAnswer.Write(context, StatusCodes.Status404NotFound, Refusals.Closed);
            return;
        }

        if (await Body(context) is not { } body)
        {
            await PlainAnswer.Write(context, StatusCodes.Status413PayloadTooLarge, Refusals.TooLong);
            return;
        }

        var headers = context.Request.Headers;
        if (_check.Look(headers[Signature.TimeHeader].ToString(), headers[Signature.Header].ToString(), body) is { } refusal)
        {
            await PlainAnswer.Write(context, refusal.Status, refusal.Sentence);
            return;
        }

        if (WebhookMessage.Read(body) is not { } message)
        {
            await PlainAnswer.Write(context, StatusCodes.Status400BadRequest, Refusals.NotAMessage);
            return;
        }

        var answers = new WebhookAnswers(message.Id, await intake.Hear(message.ToLine(clock.GetUtcNow()), context.RequestAborted));
        poster.Post(answers);
        await context.Response.WriteAsJsonAsync(answers, WireJson.Options, context.RequestAborted);
    }

    private static async Task<byte[]?> Body(HttpContext context)
    {
        try
        {
            using var body = new MemoryStream();
            await context.Request.Body.CopyToAsync(body, context.RequestAborted);
            return body.ToArray();
        }
        catch (BadHttpRequestException)
        {
            return null;
        }
    }
}
