namespace Companion.Server.Access;

/// <summary>A refusal as one plain sentence.</summary>
internal static class PlainAnswer
{
    /// <summary>Answers a request with a sentence and nothing else.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The status, 400 or above.</param>
    /// <param name="sentence">The sentence.</param>
    public static Task Write(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence, context.RequestAborted);
    }
}
