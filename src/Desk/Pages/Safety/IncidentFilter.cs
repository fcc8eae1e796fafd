using Microsoft.AspNetCore.WebUtilities;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;

namespace Slantwise.Desk.Pages.Safety;

/// <summary>What of the log is looked at, as it stands in the page's address.</summary>
/// <param name="Kind">Incidents or near misses; none for both.</param>
/// <param name="ClassId">The class of the lesson; none for all, and for what belongs to no lesson.</param>
/// <param name="Span">How far back.</param>
public sealed record IncidentFilter(IncidentKind? Kind, Guid? ClassId, IncidentSpan Span)
{
    private const int MonthDays = 30;
    private const int YearDays = 365;

    /// <summary>Whether it asks for anything at all.</summary>
    public bool IsEmpty => Kind is null && ClassId is null && Span == IncidentSpan.Ever;

    /// <summary>The filter as part of an address, with its question mark; empty where nothing is asked.</summary>
    public string Query
    {
        get
        {
            var parts = new List<string>();
            if (Kind is { } kind) parts.Add($"kind={kind}");
            if (ClassId is { } id) parts.Add($"class={id}");
            if (Span != IncidentSpan.Ever) parts.Add($"time={Span}");
            return parts.Count == 0 ? "" : "?" + string.Join('&', parts);
        }
    }

    /// <summary>What an address asks for; what it says that is unknown is passed over.</summary>
    /// <param name="query">The address's query.</param>
    public static IncidentFilter Of(string query)
    {
        var asked = QueryHelpers.ParseQuery(query);
        string Text(string name) => asked.TryGetValue(name, out var values) ? values.ToString() : "";
        return new(Named<IncidentKind>(Text("kind")), Guid.TryParse(Text("class"), out var id) ? id : null, Named<IncidentSpan>(Text("time")) ?? IncidentSpan.Ever);
    }

    /// <summary>The incidents that are looked for, in the order given.</summary>
    /// <param name="incidents">The log.</param>
    /// <param name="lessons">The school's lessons.</param>
    /// <param name="today">Today.</param>
    public IReadOnlyList<Incident> Found(IEnumerable<Incident> incidents, IReadOnlyList<Lesson> lessons, DateOnly today)
    {
        var ofClass = lessons.Where(l => l.ClassId == ClassId).Select(l => l.Id).ToHashSet();
        var first = Span switch
        {
            IncidentSpan.Month => today.AddDays(-MonthDays),
            IncidentSpan.Year => today.AddDays(-YearDays),
            _ => DateOnly.MinValue,
        };
        return [.. incidents.Where(i => (Kind is null || i.Kind == Kind) && i.Day >= first && (ClassId is null || (i.LessonId is { } lesson && ofClass.Contains(lesson))))];
    }

    private static T? Named<T>(string name)
        where T : struct, Enum => Enum.TryParse<T>(name, ignoreCase: true, out var value) && Enum.IsDefined(value) ? value : null;
}
