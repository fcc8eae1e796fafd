using Microsoft.EntityFrameworkCore;

namespace Slantwise.Storage.Model;

/// <summary>The changes of the tables' shape that this version knows.</summary>
internal static class SchemaSteps
{
    /// <summary>Refuses data whose shape a newer version has changed.</summary>
    /// <param name="context">Any context of the kind of database.</param>
    /// <param name="applied">The steps the data has been through.</param>
    /// <param name="where">What to call the data in the sentence.</param>
    /// <exception cref="InvalidDataException">There is a step this version does not know.</exception>
    public static void RefuseUnknown(DbContext context, IEnumerable<string> applied, string where)
    {
        if (applied.Except(context.Database.GetMigrations()).ToList() is [var unknown, ..])
            throw new InvalidDataException($"{where} was written by a newer version of this program (schema step {unknown}). Use that version. Nothing was changed.");
    }

    /// <summary>Refuses data that has not been through all the steps this version knows.</summary>
    /// <param name="context">Any context of the kind of database.</param>
    /// <param name="applied">The steps the data has been through.</param>
    /// <param name="where">What to call the data in the sentence.</param>
    /// <exception cref="InvalidDataException">A step is missing.</exception>
    public static void RefuseOlder(DbContext context, IEnumerable<string> applied, string where)
    {
        if (context.Database.GetMigrations().Except(applied).ToList() is [var missing, ..])
            throw new InvalidDataException($"{where} was written by an older version of this program (before schema step {missing}). Restore it with that version, then open the database with this one. Nothing was changed.");
    }
}
