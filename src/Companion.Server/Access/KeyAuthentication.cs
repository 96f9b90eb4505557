using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace Companion.Server.Access;

/// <summary>Knows a caller of a hub by the key in the cookie or, for programs, by <c>Authorization: Bearer</c>.</summary>
internal sealed class KeyAuthentication(
    IKeys keys, IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory log, UrlEncoder encoder)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, log, encoder)
{
    /// <summary>The scheme's name.</summary>
    public const string Name = "key";

    /// <inheritdoc/>
    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if ((Bearer() ?? KeyCookie.Of(Request)) is not { } sent)
            return Task.FromResult(AuthenticateResult.NoResult());
        if (keys.Find(sent) is not { } admission)
            return Task.FromResult(AuthenticateResult.Fail("The key is not known."));
        Context.Features.Set(admission);
        var identity = new ClaimsIdentity([new Claim(ClaimTypes.Role, admission.Role.ToString())], Name);
        return Task.FromResult(AuthenticateResult.Success(new(new(identity), Name)));
    }

    /// <inheritdoc/>
    protected override Task HandleChallengeAsync(AuthenticationProperties properties) =>
        PlainAnswer.Write(Context, StatusCodes.Status401Unauthorized, Sentences.NoKey);

    /// <inheritdoc/>
    protected override Task HandleForbiddenAsync(AuthenticationProperties properties) =>
        PlainAnswer.Write(Context, StatusCodes.Status403Forbidden, Sentences.OtherKey);

    private string? Bearer() =>
        Request.Headers[HeaderNames.Authorization].ToString() is var header && header.StartsWith("Bearer ", StringComparison.OrdinalIgnoreCase)
            ? header["Bearer ".Length..].Trim()
            : null;
}
