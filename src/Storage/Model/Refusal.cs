namespace Slantwise.Storage.Model;

/// <summary>A row the database would not take.</summary>
/// <param name="IsMissingParent">It names a record that is not there; otherwise it repeats something that must be unique.</param>
/// <param name="Detail">The database's own words or constraint name; names the columns of a repeated value.</param>
internal sealed record Refusal(bool IsMissingParent, string Detail)
{
    /// <summary>The refusal in words.</summary>
    /// <param name="table">The table written to.</param>
    public string Sentence(string table) => IsMissingParent ? MissingParent(table) : Repeated(table);

    private static string MissingParent(string table) => table switch
    {
        "enrolments" => "A membership names a class or a pupil that this school does not have. Nothing was saved.",
        "restrictions" => "The restriction is for a pupil this school does not have. Nothing was saved.",
        "lessons" => "The lesson names a class, a sheet or a sheet version that this school does not have. Nothing was saved.",
        "entries" => "An entry names a lesson or a pupil that this school does not have. Nothing was added.",
        "floor_lessons" => "The lesson opened for devices is one this school does not have. Nothing was saved.",
        "floor_devices" => "The device names a lesson that was not opened for devices. Nothing was saved.",
        _ => $"There is no such school: save it before its {table.Replace('_', ' ')}. Nothing was saved.",
    };

    private string Repeated(string table)
    {
        var one = table switch { "classes" => "class", "pupils" => "pupil", "floor_lessons" => "lesson", _ => table.Replace('_', ' ') };
        var what = Detail.Contains("roster_key") ? "roster key" : Detail.Contains("code") ? "code" : Detail.Contains("name") ? "name" : "id";
        return $"Another {one} of this school already has this {what}: each needs its own. Nothing was saved.";
    }
}
