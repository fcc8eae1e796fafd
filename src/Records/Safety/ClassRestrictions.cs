using Slantwise.Records.Schools;

namespace Slantwise.Records.Safety;

/// <summary>How many pupils of a class have restrictions on a day. Who, is for the class's own page.</summary>
/// <param name="Class">The class.</param>
/// <param name="PupilCount">Its current pupils.</param>
/// <param name="RestrictedCount">Of them, those with a restriction that holds.</param>
public sealed record ClassRestrictions(SchoolClass Class, int PupilCount, int RestrictedCount);
