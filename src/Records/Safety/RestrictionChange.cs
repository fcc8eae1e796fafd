using Slantwise.Records.Schools;

namespace Slantwise.Records.Safety;

/// <summary>What opens, ends or begins for pupils of a class on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Kind">What happens.</param>
/// <param name="Class">The class.</param>
/// <param name="PupilCount">For how many of its pupils.</param>
public sealed record RestrictionChange(DateOnly Day, RestrictionChangeKind Kind, SchoolClass Class, int PupilCount);
