using System.Globalization;
using System.Web;
using Slantwise.Records.Planning;

namespace Slantwise.Desk.Pages.Lessons;

/// <summary>What is tried on the page of time and mats, as its address says it.</summary>
/// <param name="Planning">What is tried; nothing where something lies outside its range.</param>
/// <param name="IsOutside">Whether something was given that cannot be tried.</param>
public sealed record PlanTimeChoice(PlanningChoice Planning, bool IsOutside)
{
    /// <summary>Reads an address; what is left empty is as planned.</summary>
    /// <param name="query">The part of the address after the question mark.</param>
    public static PlanTimeChoice Of(string query)
    {
        var asked = HttpUtility.ParseQueryString(query);
        var isReadable = true;
        int? Count(string name)
        {
            if (asked[name] is not { Length: > 0 } text) return null;
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)) return count;
            isReadable = false;
            return null;
        }
        var choice = new PlanningChoice { MatCount = Count("mats"), PupilsAMat = Count("pupils-a-mat"), RestS = Count("rest"), RecordS = Count("record") };
        return isReadable && choice.IsWithin ? new(choice, false) : new(PlanningChoice.Usual, true);
    }
}
