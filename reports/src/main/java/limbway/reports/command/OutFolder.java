package limbway.reports.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import limbway.reports.data.WholeFile;

/** Where answers are written, and what is said when they cannot be. */
final class OutFolder {

    private OutFolder() {}

    /** Makes the folder and tries to write in it, so that a long run does not end for nothing. */
    static Path prepare(Path folder) throws NotDone {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, "limbway", ".tmp"));
            return folder;
        } catch (IOException e) {
            throw notWritten(folder, e, "nothing");
        }
    }

    static void write(Path file, String text) throws NotDone {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] bytes) throws NotDone {
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            WholeFile.write(file, bytes);
        } catch (IOException e) {
            throw notWritten(file, e, "all but this file");
        }
    }

    static NotDone notWritten(Path path, IOException e, String saved) {
        return new NotDone("limbway: cannot write to " + path + ": " + why(e) + "\n  saved    " + saved + "\n");
    }

    private static String why(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "there is a file where a folder is needed";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such folder, and it cannot be made";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return e.getMessage() == null ? "the system gave no reason" : e.getMessage();
    }
}
