/*
 * Keeps, beside a database, an image of what the disk was made to keep: after each fsync or fdatasync of the file
 * SYNCED_OF/build.db or SYNCED_OF/build.db-wal the whole file is copied into the folder SYNCED_TO, under another name first and
 * renamed then. A process killed at any moment leaves there what a power cut at that moment would have left at least.
 *
 * Loaded before libc (LD_PRELOAD). Build: cc -shared -fPIC -O2 -o libsynced.so synced.c -ldl -lpthread
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static pthread_mutex_t one_at_a_time = PTHREAD_MUTEX_INITIALIZER;

static void copy(int from, const char *name) {
    const char *to = getenv("SYNCED_TO");
    char fresh[4096];
    char kept[4096];
    char block[65536];
    ssize_t length;
    off_t at = 0;
    snprintf(fresh, sizeof fresh, "%s/.%s", to, name);
    snprintf(kept, sizeof kept, "%s/%s", to, name);
    int out = open(fresh, O_CREAT | O_TRUNC | O_WRONLY | O_CLOEXEC, 0600);
    if (out < 0) {
        abort();
    }
    while ((length = pread(from, block, sizeof block, at)) > 0) {
        if (write(out, block, (size_t) length) != length) {
            abort();
        }
        at += length;
    }
    close(out);
    if (length < 0 || rename(fresh, kept) != 0) {
        abort();
    }
}

static void synced(int file) {
    const char *of = getenv("SYNCED_OF");
    char link[64];
    char path[4096];
    ssize_t length;
    size_t folder;
    if (of == NULL || getenv("SYNCED_TO") == NULL) {
        return;
    }
    snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    length = readlink(link, path, sizeof path - 1);
    folder = strlen(of);
    if (length < 0) {
        return;
    }
    path[length] = '\0';
    if (strncmp(path, of, folder) != 0 || path[folder] != '/') {
        return;
    }
    const char *name = path + folder + 1;
    if (strcmp(name, "build.db") == 0 || strcmp(name, "build.db-wal") == 0) {
        pthread_mutex_lock(&one_at_a_time);
        copy(file, name);
        pthread_mutex_unlock(&one_at_a_time);
    }
}

static int through(const char *call, int file) {
    int (*real)(int) = (int (*)(int)) dlsym(RTLD_NEXT, call);
    int result = real(file);
    if (result == 0) {
        synced(file);
    }
    return result;
}

int fsync(int file) {
    return through("fsync", file);
}

int fdatasync(int file) {
    return through("fdatasync", file);
}
