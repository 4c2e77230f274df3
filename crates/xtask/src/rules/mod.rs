//! The house rules, as checks over the files of the workspace.
