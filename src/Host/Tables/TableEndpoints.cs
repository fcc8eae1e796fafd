using Microsoft.Net.Http.Headers;
using Slantwise.Desk;
using Slantwise.Desk.Pages.Safety;
using Slantwise.Records.Evidence.Tables;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Records.Units;

namespace Slantwise.Host.Tables;

/// <summary>The desk's links to tables of evidence, as files for a spreadsheet.</summary>
internal static class TableEndpoints
{
    public static void MapTables(this WebApplication app)
    {
        app.MapGet("/tables/lessons/{id:guid}/{key}.csv", async (Guid id, string key, DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            var record = desk.HasSchool ? await LessonRecord.LoadAsync(desk.Store, desk.SchoolId, id, http.RequestAborted) : null;
            return record is null ? Results.NotFound() : Csv(key, [record], http);
        });
        app.MapGet("/tables/classes/{id:guid}/{key}.csv", async (Guid id, string key, DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            if (!desk.HasSchool) return Results.NotFound();
            var records = await LessonRecord.LoadClassAsync(desk.Store, desk.SchoolId, id, http.RequestAborted);
            return Csv(key, [.. records.Where(r => r.Lesson.SheetVersion is not null)], http);
        });
        app.MapGet("/tables/units/{id:guid}/coverage.csv", async (Guid id, DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            if (!desk.HasSchool || await desk.Store.FindUnitAsync(desk.SchoolId, id, http.RequestAborted) is not { } unit) return Results.NotFound();
            var records = await LessonRecord.LoadClassAsync(desk.Store, desk.SchoolId, unit.ClassId, http.RequestAborted);
            return File(unit.Name, UnitCoverageTable.Of(unit.Content, records), http);
        });
        app.MapGet($"/tables/{IncidentTable.Key}.csv", async (DeskSchool desk, HttpContext http) =>
        {
            await desk.LoadAsync(http.RequestAborted);
            if (!desk.HasSchool) return Results.NotFound();
            var place = await IncidentPlace.LoadAsync(desk);
            var found = IncidentFilter.Of(http.Request.QueryString.Value ?? "").Found(await desk.Store.ListIncidentsAsync(desk.SchoolId, http.RequestAborted), place.Lessons, desk.Today);
            return File(desk.School.Name, IncidentTable.Of(found, place.Lessons, place.Classes, place.Tasks, place.Pupils), http);
        });
    }

    private static IResult Csv(string key, IReadOnlyList<LessonRecord> records, HttpContext http)
    {
        if (records.Count == 0 || EvidenceTables.Of(key, records) is not { } table) return Results.NotFound();
        return File(records[0].Class.Name, table, http);
    }

    private static IResult File(string name, EvidenceTable table, HttpContext http)
    {
        var disposition = new ContentDispositionHeaderValue("attachment");
        disposition.SetHttpFileName($"{name} {table.Key}.csv");
        http.Response.Headers.ContentDisposition = disposition.ToString();
        // Children's names: no copy is to stay in a browser's store.
        http.Response.Headers.CacheControl = "no-store";
        return Results.Bytes(table.ToCsv(), "text/csv; charset=utf-8");
    }
}
