using System.Globalization;
using System.Text.Json;
using Slantwise.Host.Words;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Host.Sync;

/// <summary>The one place where a refusal becomes an answer: a status, a code for the program, a sentence for whoever reads it.</summary>
/// <remarks>Source: [RFC9457].</remarks>
internal static class FloorProblems
{
    // Long enough for a commit that hung, short enough for a child who waits.
    private const int BusyRetryS = 2;
    private const int LimitRetryS = 10;

    /// <summary>The status of each problem.</summary>
    public static int StatusOf(FloorProblemKind kind) => kind switch
    {
        FloorProblemKind.BodyUnreadable => StatusCodes.Status400BadRequest,
        FloorProblemKind.TicketInvalid or FloorProblemKind.TokenInvalid => StatusCodes.Status401Unauthorized,
        FloorProblemKind.NotAllowed => StatusCodes.Status403Forbidden,
        FloorProblemKind.CodeUnknown or FloorProblemKind.DeviceUnknown or FloorProblemKind.PupilUnknown => StatusCodes.Status404NotFound,
        FloorProblemKind.LessonClosed or FloorProblemKind.LessonWithoutSheet or FloorProblemKind.LessonFull or FloorProblemKind.DeviceIdTaken => StatusCodes.Status409Conflict,
        FloorProblemKind.CodeExpired => StatusCodes.Status410Gone,
        FloorProblemKind.BatchTooLarge or FloorProblemKind.BodyTooLarge => StatusCodes.Status413PayloadTooLarge,
        FloorProblemKind.PupilCount or FloorProblemKind.NameLength => StatusCodes.Status422UnprocessableEntity,
        FloorProblemKind.TooManyTries or FloorProblemKind.TooOften => StatusCodes.Status429TooManyRequests,
        FloorProblemKind.Busy => StatusCodes.Status503ServiceUnavailable,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A problem has a status."),
    };

    /// <summary>Its code, as in docs/sync.md.</summary>
    public static string CodeOf(FloorProblemKind kind) => JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());

    /// <summary>Answers with a problem.</summary>
    /// <param name="http">The request.</param>
    /// <param name="kind">What is wrong.</param>
    public static Task WriteAsync(HttpContext http, FloorProblemKind kind)
    {
        var status = StatusOf(kind);
        http.Response.StatusCode = status;
        if (status is StatusCodes.Status429TooManyRequests or StatusCodes.Status503ServiceUnavailable)
            http.Response.Headers.RetryAfter = (kind == FloorProblemKind.Busy ? BusyRetryS : LimitRetryS).ToString(CultureInfo.InvariantCulture);
        if (status == StatusCodes.Status401Unauthorized) http.Response.Headers.WWWAuthenticate = "Bearer";
        var problem = new FloorProblem(status, HostWords.Say("Floor" + kind), CodeOf(kind), SyncCaller.Known(http)?.State);
        return http.Response.WriteAsJsonAsync(problem, EntryJson.Options, "application/problem+json", http.RequestAborted);
    }
}
