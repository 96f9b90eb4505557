using System.Globalization;
using System.Security.Claims;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Authentication;

namespace Companion.Server.Access;

/// <summary>Who may see and do what.</summary>
internal static class AccessFeature
{
    /// <summary>Adds the keys of this program's data folder.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddKeys(this IServiceCollection services) => services
        .AddSingleton<KeyFile>().AddSingleton<KeyRing>().AddSingleton<IKeys>(provider => provider.GetRequiredService<KeyRing>())
        .AddHostedService<KeyWatch>();

    /// <summary>Adds authentication, policies and the rate limit of the entrance. Which keys there are is for the caller to add.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddAccess(this IServiceCollection services)
    {
        // The core alone: AddAuthentication would bring data protection, which leaves key files of its own in the user's home.
        services.AddAuthenticationCore(authentication => authentication.DefaultScheme = KeyAuthentication.Name).AddWebEncoders();
        new AuthenticationBuilder(services).AddScheme<AuthenticationSchemeOptions, KeyAuthentication>(KeyAuthentication.Name, null);
        services.AddAuthorizationBuilder()
            .AddPolicy(Policies.Presenter, policy => policy.RequireRole(nameof(AccessRole.Presenter)))
            .AddPolicy(Policies.CoHost, policy => policy.RequireRole(nameof(AccessRole.CoHost)))
            .AddPolicy(Policies.Overlay, policy => policy.RequireRole(nameof(AccessRole.Overlay)));
        // By address, so that no viewer keeps the presenter out. Viewers behind one proxy share one; others have a use for a dozen.
        return services.AddRateLimiter(limits => limits
            .AddPolicy(Entrance.Path, context => RateLimitPartition.GetTokenBucketLimiter(context.Connection.RemoteIpAddress, _ => new()
            {
                TokenLimit = 60,
                TokensPerPeriod = 20,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
            }))
            .OnRejected = async (rejected, _) =>
            {
                rejected.HttpContext.Response.Headers.RetryAfter = 5.ToString(CultureInfo.InvariantCulture);
                await PlainAnswer.Write(rejected.HttpContext, StatusCodes.Status429TooManyRequests, Sentences.TooManyKeys);
            });
    }

    /// <summary>Puts the checks before everything else.</summary>
    /// <param name="app">The server.</param>
    public static void UseAccess(this WebApplication app)
    {
        app.UseMiddleware<SecurityHeaders>();
        app.UseMiddleware<HostCheck>();
        app.UseMiddleware<OriginCheck>();
        app.UseRouting();
        app.UseRateLimiter();
        app.UseAuthentication();
        app.UseAuthorization();
    }

    /// <summary>Maps the entrance.</summary>
    /// <param name="app">The server.</param>
    public static void MapAccess(this WebApplication app) => Entrance.Map(app);

    /// <summary>The role that a caller's key has.</summary>
    /// <param name="caller">A caller that was let in.</param>
    public static AccessRole Role(this ClaimsPrincipal caller) => Enum.Parse<AccessRole>(caller.FindFirstValue(ClaimTypes.Role)!);
}
