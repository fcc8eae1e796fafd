using System.Globalization;
using System.Text.Encodings.Web;
using Slantwise.Host.Words;

namespace Slantwise.Host.Printing;

/// <summary>A page of one sentence in the place of a document that cannot be printed, with the way on.</summary>
internal static class NoticePage
{
    public static IResult LessonMissing() =>
        Of(StatusCodes.Status404NotFound, HostWords.Say("PrintLessonMissing"), "/lessons", HostWords.Say("ToLessons"));

    public static IResult NotPrepared(Guid lessonId) =>
        Of(StatusCodes.Status409Conflict, HostWords.Say("PrintNotPrepared"), $"/lessons/{lessonId}", HostWords.Say("ToLesson"));

    public static IResult NoPupils(Guid classId) =>
        Of(StatusCodes.Status409Conflict, HostWords.Say("PrintNoPupils"), $"/classes/{classId}", HostWords.Say("ToClass"));

    public static IResult NoGroups(Guid lessonId) =>
        Of(StatusCodes.Status409Conflict, HostWords.Say("PrintNoGroups"), $"/lessons/{lessonId}/groups", HostWords.Say("ToGroups"));

    public static IResult NotOpen(Guid lessonId) =>
        Of(StatusCodes.Status409Conflict, HostWords.Say("FloorNotOpen"), $"/lessons/{lessonId}/floor", HostWords.Say("ToTablets"));

    public static IResult Refused(Guid lessonId, string sentence) =>
        Of(StatusCodes.Status409Conflict, sentence, $"/lessons/{lessonId}/floor", HostWords.Say("ToTablets"));

    public static IResult PageMissing(Guid lessonId, int page, int count) =>
        Of(StatusCodes.Status404NotFound, HostWords.Say("PrintPageMissing", page, count), $"/lessons/{lessonId}", HostWords.Say("ToLesson"));

    public static string Html(string sentence, string? address, string? linkText)
    {
        var language = CultureInfo.CurrentUICulture.TwoLetterISOLanguageName;
        var link = address is null ? "" : $"""<p><a href="{HtmlEncoder.Default.Encode(address)}">{HtmlEncoder.Default.Encode(linkText ?? address)}</a></p>""";
        return $"""
            <!DOCTYPE html>
            <html lang="{language}">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Slantwise</title>
            <link rel="stylesheet" href="/_content/Slantwise.Desk/desk.css">
            </head>
            <body>
            <main class="page">
            <h1>Slantwise</h1>
            <p>{HtmlEncoder.Default.Encode(sentence)}</p>
            {link}
            </main>
            </body>
            </html>
            """;
    }

    private static IResult Of(int status, string sentence, string address, string linkText) =>
        Results.Content(Html(sentence, address, linkText), "text/html; charset=utf-8", statusCode: status);
}
