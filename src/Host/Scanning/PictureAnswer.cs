namespace Slantwise.Host.Scanning;

/// <summary>A picture of a sheet as an answer.</summary>
internal sealed class PictureAnswer(byte[] bytes) : IResult
{
    public Task ExecuteAsync(HttpContext http)
    {
        http.Response.Headers.CacheControl = "no-store";
        http.Response.Headers.ContentDisposition = "inline";
        http.Response.ContentType = bytes is [0xFF, 0xD8, ..] ? "image/jpeg" : "image/png";
        http.Response.ContentLength = bytes.Length;
        return http.Response.Body.WriteAsync(bytes, http.RequestAborted).AsTask();
    }
}
