using System.Text.Json;
using Microsoft.AspNetCore.Http.Features;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;

namespace Slantwise.Host.Sync;

/// <summary>Reads bodies: JSON of one shape, no larger than it needs to be.</summary>
internal static class SyncBody
{
    /// <summary>Bytes of a body, at most: two hundred entries with the longest texts are half of it.</summary>
    public const int MostByteCount = 512 * 1024;

    /// <summary>Reads a body.</summary>
    /// <exception cref="FloorRefusal">Too large, not of that shape, or cut off.</exception>
    public static async Task<T> ReadAsync<T>(HttpContext http)
        where T : class
    {
        if (http.Request.ContentLength > MostByteCount) throw new FloorRefusal(FloorProblemKind.BodyTooLarge);
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = MostByteCount;
        try
        {
            return await JsonSerializer.DeserializeAsync<T>(http.Request.Body, EntryJson.Options, http.RequestAborted)
                ?? throw new FloorRefusal(FloorProblemKind.BodyUnreadable);
        }
        catch (BadHttpRequestException failure)
        {
            // Too large without having said so; or cut off on its way, which is nobody's failure here.
            throw new FloorRefusal(failure.StatusCode == StatusCodes.Status413PayloadTooLarge ? FloorProblemKind.BodyTooLarge : FloorProblemKind.BodyUnreadable, failure);
        }
        catch (Exception failure) when (IsUnreadable(failure))
        {
            throw new FloorRefusal(FloorProblemKind.BodyUnreadable, failure);
        }
    }

    /// <summary>Whether a failure says that JSON is not what it should be: not JSON, another shape, a kind that is not known.</summary>
    public static bool IsUnreadable(Exception failure) => failure is JsonException or NotSupportedException or InvalidOperationException;
}
